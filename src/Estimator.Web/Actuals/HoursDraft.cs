using System.Globalization;
using Estimator.Data.Actuals;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Learning;
using Estimator.Engine.Measures;
using Estimator.Web.Catalogues;
using Estimator.Web.Figures;

namespace Estimator.Web.Actuals;

/// <summary>Hours as they are typed.</summary>
public sealed class HoursDraft
{
    private const int MostDigits = 2;

    /// <summary>The day, as a date field has it.</summary>
    public string Day { get; set; } = "";

    /// <summary>The phase.</summary>
    public WorkPhase Phase { get; set; } = WorkPhase.RoughIn;

    /// <summary>The hours.</summary>
    public string Hours { get; set; } = "";

    /// <summary>Who worked.</summary>
    public string Note { get; set; } = "";

    /// <summary>The entry, or what is wrong with what was typed.</summary>
    public Parsed<ActualHours> Read()
    {
        if (!DateOnly.TryParseExact(Day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return Parsed<ActualHours>.Failure("A day is needed, such as that on which the hours were worked.");
        }

        return Number(Hours, ActualsLimits.Hours) is { Ok: true, Value: > 0 } hours
            ? Parsed<ActualHours>.Success(new ActualHours(0, day, Phase, decimal.Round(hours.Value, MostDigits, MidpointRounding.AwayFromZero), Note.Trim()))
            : Parsed<ActualHours>.Failure($"Found “{PriceText.Short(Hours)}”; hours above 0 and up to {American.Number(ActualsLimits.Hours)} are accepted, such as 7.5.");
    }

    /// <summary>A number from zero, as people type it.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="most">The highest that is accepted.</param>
    public static Parsed<decimal> Number(string? text, decimal most) =>
        decimal.TryParse((text ?? "").Trim(), NumberStyles.AllowDecimalPoint | NumberStyles.AllowThousands, CultureInfo.InvariantCulture, out var number) && number >= 0 && number <= most
            ? Parsed<decimal>.Success(number)
            : Parsed<decimal>.Failure($"Found “{PriceText.Short(text)}”; a number from 0 to {American.Number(most)} is accepted.");
}
