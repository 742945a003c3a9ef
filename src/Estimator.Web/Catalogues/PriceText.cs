using System.Globalization;
using Estimator.Engine.Measures;
using Estimator.Web.Figures;

namespace Estimator.Web.Catalogues;

/// <summary>Reads dollars and whole numbers that a person typed.</summary>
public static class PriceText
{
    /// <summary>A price: <c>95</c>, <c>$95.50</c> or <c>1,095.50</c>.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="most">The highest that is accepted, in dollars.</param>
    public static Parsed<Money> Parse(string? text, decimal most = OwnPrices.HighestDollars)
    {
        var typed = (text ?? "").Trim().TrimStart('$').Trim();
        return decimal.TryParse(typed, NumberStyles.AllowDecimalPoint | NumberStyles.AllowThousands, CultureInfo.InvariantCulture, out var dollars)
            && dollars >= 0 && dollars <= most && dollars == decimal.Round(dollars, 4, MidpointRounding.AwayFromZero)
            ? Parsed<Money>.Success(Money.FromDollars(dollars))
            : Parsed<Money>.Failure($"Found “{Short(text)}”; a price in dollars is accepted, such as 95.50, from 0 to {American.Number(most)}.");
    }

    /// <summary>A whole number between two others.</summary>
    public static Parsed<int> Whole(string? text, int least, int most, string what)
    {
        var typed = (text ?? "").Trim();
        return int.TryParse(typed, NumberStyles.AllowThousands, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most
            ? Parsed<int>.Success(number)
            : Parsed<int>.Failure($"Found “{Short(text)}”; {what} from {American.Number(least)} to {American.Number(most)} are accepted.");
    }

    /// <summary>The start of a long text, for a sentence about it.</summary>
    public static string Short(string? text)
    {
        const int Shown = 40;
        var whole = (text ?? "").Trim();
        return whole.Length <= Shown ? whole : string.Concat(whole.AsSpan(0, Shown), "…");
    }
}
