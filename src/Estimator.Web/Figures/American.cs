using System.Globalization;

namespace Estimator.Web.Figures;

/// <summary>How numbers, money and dates read in the United States.</summary>
/// <remarks>
/// The program runs without the machine's culture data, so that the engine prints alike everywhere. The few rules that the pages need are set
/// here by hand on a copy of the invariant culture: dollar sign, thousands by comma, month before day, twelve-hour clock.
/// </remarks>
public static class American
{
    private const char Minus = '\u2212';

    /// <summary>The culture of every page.</summary>
    public static CultureInfo Culture { get; } = MakeCulture();

    /// <summary>Dollars and cents: $7,512.00.</summary>
    public static string Dollars(decimal dollars) => Signed(dollars, Math.Abs(dollars).ToString("$#,0.00", Culture));

    /// <summary>Whole dollars, half away from zero: $7,512.</summary>
    public static string WholeDollars(decimal dollars)
    {
        var whole = decimal.Round(dollars, 0, MidpointRounding.AwayFromZero);
        return Signed(whole, Math.Abs(whole).ToString("$#,0", Culture));
    }

    /// <summary>A change in whole dollars, with its sign: +$71.</summary>
    public static string DollarChange(decimal dollars) =>
        decimal.Round(dollars, 0, MidpointRounding.AwayFromZero) is > 0 ? $"+{WholeDollars(dollars)}" : WholeDollars(dollars);

    /// <summary>A change of any number, with its sign: +14.</summary>
    public static string Change(decimal value, int digits = 0) =>
        decimal.Round(value, digits, MidpointRounding.AwayFromZero) is > 0 ? $"+{Number(value, digits)}" : Number(value, digits);

    /// <summary>A number with thousands by comma and at most so many digits after the point, half away from zero.</summary>
    public static string Number(decimal value, int digits = 0)
    {
        var rounded = decimal.Round(value, digits, MidpointRounding.AwayFromZero);
        return Signed(rounded, Math.Abs(rounded).ToString(digits == 0 ? "#,0" : "#,0." + new string('#', digits), Culture));
    }

    /// <summary>A number with just so many digits after the point, half away from zero.</summary>
    public static string Fixed(decimal value, int digits)
    {
        var rounded = decimal.Round(value, digits, MidpointRounding.AwayFromZero);
        return Signed(rounded, Math.Abs(rounded).ToString("#,0." + new string('0', digits), Culture));
    }

    /// <summary>A time of day: 8:51 AM.</summary>
    public static string TimeOfDay(DateTimeOffset time) => time.ToString("h:mm tt", Culture);

    /// <summary>A day: Mar 2, 2026.</summary>
    public static string Day(DateOnly day) => day.ToString("MMM d, yyyy", Culture);

    /// <summary>A day and time: Mar 2, 2026, 8:51 AM.</summary>
    public static string DayAndTime(DateTimeOffset time) => time.ToString("MMM d, yyyy, h:mm tt", Culture);

    /// <summary>How many of a thing: 1 room, 3 rooms.</summary>
    public static string Count(int count, string one, string? many = null) => $"{Number(count)} {(count == 1 ? one : many ?? one + "s")}";

    private static string Signed(decimal value, string unsigned) => value < 0 ? Minus + unsigned : unsigned;

    private static CultureInfo MakeCulture()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.CurrencySymbol = "$";
        culture.NumberFormat.CurrencyNegativePattern = 1;
        culture.NumberFormat.PercentPositivePattern = 1;
        culture.DateTimeFormat.ShortDatePattern = "M/d/yyyy";
        culture.DateTimeFormat.LongDatePattern = "dddd, MMMM d, yyyy";
        culture.DateTimeFormat.ShortTimePattern = "h:mm tt";
        culture.DateTimeFormat.LongTimePattern = "h:mm:ss tt";
        culture.DateTimeFormat.FirstDayOfWeek = DayOfWeek.Sunday;
        return CultureInfo.ReadOnly(culture);
    }
}
