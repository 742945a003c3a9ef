using System.Text;

namespace Estimator.Cli.Takeoffs;

/// <summary>Writes CSV that a spreadsheet opens as text and numbers, never as formulas.</summary>
/// <remarks>Source: RFC 4180; a text cell that starts like a formula gets an apostrophe.</remarks>
internal static class Csv
{
    private static readonly char[] FormulaStarts = ['=', '+', '-', '@', '\t', '\r'];

    internal static void Row(StringBuilder csv, params ReadOnlySpan<string> cells)
    {
        for (var i = 0; i < cells.Length; i++)
        {
            csv.Append(i == 0 ? "" : ",").Append(cells[i].AsSpan().ContainsAny(",\"\r\n") ? $"\"{cells[i].Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cells[i]);
        }

        csv.Append("\r\n");
    }

    /// <summary>A text cell, made harmless.</summary>
    internal static string Text(string text) => text.Length > 0 && FormulaStarts.Contains(text[0]) ? $"'{text}" : text;
}
