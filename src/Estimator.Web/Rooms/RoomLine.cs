using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;

namespace Estimator.Web.Rooms;

/// <summary>A room as it is typed in one line: a name and two sides, such as <c>Bedroom 11 x 13</c> or <c>Office 8' 6" x 9'</c>.</summary>
/// <param name="Name">The name.</param>
/// <param name="Width">One side.</param>
/// <param name="Depth">The other side.</param>
public sealed record RoomLine(string Name, Length Width, Length Depth)
{
    private const string Accepted = "a name and two sides, like Bedroom 11 x 13 or Office 8' 6\" x 9'";

    /// <summary>Reads a line.</summary>
    public static Parsed<RoomLine> Parse(string text)
    {
        var cross = text.LastIndexOfAny(['x', 'X', '\u00D7']);
        if (cross <= 0)
        {
            return Parsed<RoomLine>.Failure($"Found '{Shortened(text)}'; {Accepted} is accepted.");
        }

        var before = text[..cross].TrimEnd();
        var start = before.Length;
        // The first side is the longest end before the cross that reads as a length. Bare numbers are taken one at a time, since
        // Bedroom 2 11 x 13 is the second bedroom and not a side of two feet eleven.
        Length? width = null;
        for (var i = before.Length - 1; i >= 0; i--)
        {
            if ((i == 0 || char.IsWhiteSpace(before[i - 1])) && (width is null || before[i..].Any(IsMark)) && Side(before[i..]) is { Ok: true } side)
            {
                (width, start) = (side.Value, i);
            }
        }

        var depth = Side(text[(cross + 1)..]);
        var name = before[..start].Trim().TrimEnd(',');
        if (width is not { } first || !depth.Ok || name.Length == 0)
        {
            return Parsed<RoomLine>.Failure(depth.Ok || width is null ? $"Found '{Shortened(text)}'; {Accepted} is accepted." : depth.Problem ?? "");
        }

        return Parsed<RoomLine>.Success(new RoomLine(name, first, depth.Value));
    }

    /// <summary>Reads a side; a bare number is feet, as people say it of rooms.</summary>
    public static Parsed<Length> Side(string text)
    {
        var trimmed = text.Trim();
        var parsed = Length.Parse(decimal.TryParse(trimmed, System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture, out _) ? $"{trimmed}'" : trimmed);
        return !parsed.Ok ? parsed
            : parsed.Value > Length.Zero && parsed.Value <= Length.FromFeet(JobLimits.Feet) ? parsed
            : Parsed<Length>.Failure($"Found {parsed.Value}; more than nothing and up to {JobLimits.Feet} ft are accepted.");
    }

    private static bool IsMark(char c) => c is '\'' or '"' or '\u2032' or '\u2033' || char.IsLetter(c);

    private static string Shortened(string text) => text.Length > 60 ? $"{text[..60]}…" : text;
}
