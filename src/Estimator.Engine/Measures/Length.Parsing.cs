using System.Globalization;
using System.Text.RegularExpressions;

namespace Estimator.Engine.Measures;

public readonly partial record struct Length
{
    private const int Longest = 40;
    private const string Accepted = "a length like 12' 6\", 12' 6 1/2\", 12.5 ft, 150 in, 3.8 m, 3800 mm or, for feet and inches, 12 6 1/2";

#pragma warning disable MA0009 // What is read has at most forty characters, and a time limit would let a busy machine refuse a good length.
    [GeneratedRegex(
        """^(?<sign>-)?\s*(?:(?<feet>\d+(?:\.\d+)?)\s*(?:'|′|ft|feet|foot)\s*-?\s*)?(?:(?<inches>\d+(?:\.\d+)?)(?!\s*/)(?:[\s-]+(?<num>\d+)/(?<den>\d+))?|(?<num>\d+)/(?<den>\d+))?\s*(?:"|″|in|inch|inches)?$""",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex FeetAndInches();

    [GeneratedRegex(
        """^(?<sign>-)?\s*(?<feet>\d+)\s+(?<inches>\d+)(?:[\s-]+(?<num>\d+)/(?<den>\d+))?$""",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex BareFeetAndInches();

    [GeneratedRegex(
        """^(?<value>-?\d+(?:\.\d+)?)\s*(?<unit>m|cm|mm|metres?|meters?)$""",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex Metric();
#pragma warning restore MA0009

    /// <summary>Reads a length as people write it; see the message for the forms. A bare number without a unit is refused.</summary>
    public static Parsed<Length> Parse(string text)
    {
        var trimmed = text.Trim();
        if (trimmed.Length is 0 or > Longest)
        {
            return Refused(text);
        }

        try
        {
            return ParseMetric(trimmed) ?? ParseFeetAndInches(trimmed) ?? Refused(text);
        }
        catch (OverflowException)
        {
            return Parsed<Length>.Failure($"'{trimmed}' is longer than any house; {Accepted} is accepted.");
        }
    }

    private static Parsed<Length>? ParseMetric(string text)
    {
        var match = Metric().Match(text);
        if (!match.Success)
        {
            return null;
        }

        var value = Number(match.Groups["value"]);
        return Parsed<Length>.Success(match.Groups["unit"].Value.ToUpperInvariant() switch
        {
            "MM" => FromMetres(value / 1000),
            "CM" => FromMetres(value / 100),
            _ => FromMetres(value),
        });
    }

    private static Parsed<Length>? ParseFeetAndInches(string text)
    {
        var match = BareFeetAndInches().Match(text);
        if (!match.Success)
        {
            match = FeetAndInches().Match(text);
            var unitless = match.Success && decimal.TryParse(text, NumberStyles.Number, CultureInfo.InvariantCulture, out _);
            if (!match.Success || unitless)
            {
                return null;
            }
        }

        var (feet, inches) = (match.Groups["feet"], match.Groups["inches"]);
        var denominator = match.Groups["den"].Success ? Number(match.Groups["den"]) : 1m;
        if (denominator == 0 || !(feet.Success || inches.Success || match.Groups["num"].Success))
        {
            return null;
        }

        var total = Number(inches) + Number(match.Groups["num"]) / denominator;
        var length = FromFeet(Number(feet)) + FromInches(total);
        return Parsed<Length>.Success(match.Groups["sign"].Success ? -length : length);
    }

    private static decimal Number(Group group) =>
        group.Success ? decimal.Parse(group.Value, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture) : 0m;

    private static Parsed<Length> Refused(string text)
    {
        var shown = text.Length > 40 ? string.Concat(text.AsSpan(0, 40), "...") : text;
        return Parsed<Length>.Failure($"'{shown}' is not a length; {Accepted} is accepted.");
    }
}
