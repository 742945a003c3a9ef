using System.Globalization;
using Estimator.Engine.Measures;
using Estimator.Web.Figures;

namespace Estimator.Web.Entries;

/// <summary>Reads what people type into fields, and writes what the job holds. An empty field states nothing.</summary>
public static class Typed
{
    private const int Shown = 60;
    private const int MostDigits = 4;
    private const int Kilo = 1000;

    /// <summary>A length such as 9' 6", or nothing.</summary>
    public static Parsed<Length?> Length(string text)
    {
        if (text.Length == 0)
        {
            return Parsed<Length?>.Success(null);
        }

        var parsed = Engine.Measures.Length.Parse(text);
        return parsed.Ok ? Parsed<Length?>.Success(parsed.Value) : Parsed<Length?>.Failure(parsed.Problem);
    }

    /// <summary>A number, or nothing; dollar sign, commas and the unit may be left out or written.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="accepted">What is accepted, for the sentence.</param>
    /// <param name="units">Units that may stand behind the number; one that begins with k stands for a thousand.</param>
    public static Parsed<decimal?> Number(string text, string accepted, params ReadOnlySpan<string> units)
    {
        var (rest, factor) = (text.Replace(",", "", StringComparison.Ordinal).TrimStart('$').Trim(), 1);
        foreach (var unit in units)
        {
            if (rest.EndsWith(unit, StringComparison.OrdinalIgnoreCase))
            {
                (rest, factor) = (rest[..^unit.Length].TrimEnd(), unit.StartsWith('k') ? Kilo : 1);
                break;
            }
        }

        if (rest.Length == 0 && text.Length == 0)
        {
            return Parsed<decimal?>.Success(null);
        }

        const NumberStyles Style = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign;
        return rest.Length <= Shown && decimal.TryParse(rest, Style, CultureInfo.InvariantCulture, out var number) && Math.Abs(number) < 1_000_000_000
            ? Parsed<decimal?>.Success(number * factor)
            : Parsed<decimal?>.Failure(Wrong(text, accepted));
    }

    /// <summary>A whole number, or nothing.</summary>
    public static Parsed<int?> Whole(string text, string accepted)
    {
        var parsed = Number(text, accepted);
        return !parsed.Ok ? Parsed<int?>.Failure(parsed.Problem)
            : parsed.Value is { } number && decimal.Truncate(number) != number ? Parsed<int?>.Failure(Wrong(text, accepted))
            : Parsed<int?>.Success((int?)parsed.Value);
    }

    /// <summary>The same with a sentence where the field may not be empty.</summary>
    public static Parsed<T> Needed<T>(Parsed<T?> parsed, string accepted)
        where T : struct => !parsed.Ok ? Parsed<T>.Failure(parsed.Problem) : parsed.Value is { } value ? Parsed<T>.Success(value) : Parsed<T>.Failure(Wrong("", accepted));

    /// <summary>Amperes, or nothing.</summary>
    public static Parsed<Current?> Amperes(string text, string accepted) => As(Number(text, accepted, "amps", "amp", "A"), Current.FromAmperes);

    /// <summary>Volt-amperes, or nothing; watts and kilowatts of heat and the like count as volt-amperes.</summary>
    public static Parsed<Power?> VoltAmperes(string text) => As(Number(text, "a load such as 4,500 VA or 4.5 kVA", "kVA", "kW", "VA", "W"), Power.FromVoltAmperes);

    /// <summary>Square feet, or nothing.</summary>
    public static Parsed<Area?> SquareFeet(string text) => As(Number(text, "an area such as 2,000 sq ft", "sq ft", "sqft", "sf"), Area.FromSquareFeet);

    /// <summary>Dollars, not below zero, or nothing.</summary>
    public static Parsed<Money?> Dollars(string text)
    {
        const string Accepted = "dollars from 0, such as $350";
        var parsed = As(Number(text, Accepted), Money.FromDollars);
        return parsed is { Ok: true, Value: { } money } && money < Money.Zero ? Parsed<Money?>.Failure(Wrong(text, Accepted)) : parsed;
    }

    /// <summary>Percent, or nothing.</summary>
    public static Parsed<Percent?> Percent(string text) => As(Number(text, "a percentage such as 3", "%"), Engine.Measures.Percent.FromHundredths);

    /// <summary>How a number stands in its field.</summary>
    public static string Of(decimal? number) => number is { } value ? American.Number(value, MostDigits) : "";

    /// <summary>What was found and what is accepted.</summary>
    public static string Wrong(string found, string accepted) =>
        $"Found {(found.Length == 0 ? "nothing" : $"“{(found.Length > Shown ? found[..Shown] + "…" : found)}”")}; accepted is {accepted}.";

    private static Parsed<T?> As<T>(Parsed<decimal?> number, Func<decimal, T> make)
        where T : struct => number.Ok ? Parsed<T?>.Success(number.Value is { } value ? make(value) : null) : Parsed<T?>.Failure(number.Problem);
}
