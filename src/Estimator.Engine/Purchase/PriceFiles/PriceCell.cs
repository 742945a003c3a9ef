using System.Globalization;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase.PriceFiles;

/// <summary>Reads one cell of a price file.</summary>
internal static class PriceCell
{
    private const int Shown = 40;
    private const int Decimals = 6;

    // Before day 61, March 1, 1900, counting is off by the day that 1900 did not have. Source: ECMA-376 part 1, 18.17.4.1.
    private const int FirstSoundDay = 61;
    private const int LastDay = 2_950_000;
    private static readonly string[] DayForms = ["yyyy-MM-dd", "M/d/yyyy", "M/d/yy", "yyyy-MM-dd HH:mm:ss", "M/d/yyyy H:mm"];

    /// <summary>Dollars, with or without sign and thousands.</summary>
    internal static Parsed<decimal> Price(string text)
    {
        var typed = text.Trim().TrimStart('$').Trim();
        return decimal.TryParse(typed, NumberStyles.AllowDecimalPoint | NumberStyles.AllowThousands | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out var dollars) && dollars > 0 && dollars <= Offer.HighestDollars
            ? Parsed<decimal>.Success(decimal.Round(dollars, Decimals, MidpointRounding.AwayFromZero))
            : Parsed<decimal>.Failure(FormattableString.Invariant($"Found '{Short(text)}'; a price above 0 up to {Offer.HighestDollars:#,0} dollars is accepted, such as 95.50."));
    }

    /// <summary>A whole number of pieces or feet.</summary>
    internal static Parsed<int> Pack(string text)
    {
        return decimal.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint | NumberStyles.AllowThousands, CultureInfo.InvariantCulture, out var number) && number == decimal.Truncate(number) && number is >= 1 and <= Offer.LargestPack
            ? Parsed<int>.Success(decimal.ToInt32(number))
            : Parsed<int>.Failure(FormattableString.Invariant($"Found '{Short(text)}'; a whole number of pieces or feet from 1 to {Offer.LargestPack:#,0} is accepted."));
    }

    /// <summary>A day: year first, or month first as Americans write it; a workbook's day number where the file counts days.</summary>
    internal static Parsed<DateOnly> Day(string text, DateOnly? dayZero)
    {
        var typed = text.Trim();
        if (DateTime.TryParseExact(typed, DayForms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return Parsed<DateOnly>.Success(DateOnly.FromDateTime(day));
        }

        return dayZero is { } zero && decimal.TryParse(typed, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var serial) && serial is >= FirstSoundDay and <= LastDay
            ? Parsed<DateOnly>.Success(zero.AddDays(decimal.ToInt32(decimal.Truncate(serial))))
            : Parsed<DateOnly>.Failure($"Found '{Short(text)}'; a day such as 2026-03-31 or 3/31/2026 is accepted.");
    }

    internal static string Short(string? text)
    {
        var whole = (text ?? "").Trim();
        return whole.Length <= Shown ? whole : string.Concat(whole.AsSpan(0, Shown), "…");
    }
}
