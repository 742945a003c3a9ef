using System.Text;
using System.Text.RegularExpressions;

namespace Estimator.Documents.Workbooks;

/// <summary>Makes any text fit for a cell, so that it stays the text that it is.</summary>
/// <remarks>
/// A cell holds 32,767 characters and what XML 1.0 allows; an underscore before <c>xHHHH_</c> is escaped because readers take that for one character.
/// Source: ECMA-376 part 1, 22.9.2.19 (ST_Xstring); Excel specifications and limits.
/// </remarks>
internal static partial class CellText
{
    private const int Longest = 32_767;
    private const int LongestFooter = 60;

    internal static string Of(string text)
    {
        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.ReplaceLineEndings("\n").EnumerateRunes())
        {
            clean.Append(rune.Value is '\t' or '\n' or >= 0x20 and not 0xFFFE and not 0xFFFF ? rune.ToString() : "\uFFFD");
        }

        var escaped = Escapes().Replace(clean.ToString(), "_x005F_");
        return escaped.Length <= Longest ? escaped : string.Concat(escaped.AsSpan(0, Longest - 1), "…");
    }

    /// <summary>Text for a page footer, where an ampersand begins a code.</summary>
    internal static string ForFooter(string text)
    {
        var line = Of(text).ReplaceLineEndings(" ");
        var end = Math.Min(line.Length, LongestFooter);
        end -= end > 0 && char.IsHighSurrogate(line[end - 1]) ? 1 : 0;
        return line[..end].Replace("&", "&&", StringComparison.Ordinal);
    }

    [GeneratedRegex("_(?=x[0-9A-Fa-f]{4}_)", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Escapes();
}
