using System.Globalization;
using Estimator.Engine.Measures;

namespace Estimator.Documents.Tests.Sums;

/// <summary>Reads a figure as a reader of a paper does: dollars, a plain number, one with VA or A behind it, or feet and inches.</summary>
internal static class PrintedFigure
{
    /// <summary>The figure; null where the text is none. Lengths come in sixteenths of an inch.</summary>
    internal static decimal? Of(string text)
    {
        var bare = text.StartsWith("-$", StringComparison.Ordinal) ? $"-{text[2..]}" : text.TrimStart('$').Replace(" VA", "", StringComparison.Ordinal).Replace(" A", "", StringComparison.Ordinal);
        return decimal.TryParse(bare, NumberStyles.Number, CultureInfo.InvariantCulture, out var number) ? number
            : text.Contains('"') && Length.Parse(text) is { Ok: true } length ? length.Value.ToSixteenths() : null;
    }
}
