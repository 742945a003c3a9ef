using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace Estimator.Documents.Tables;

/// <summary>Writes CSV that a spreadsheet opens as text and numbers, never as formulas.</summary>
/// <remarks>
/// Source: RFC 4180. A text that starts like a formula gets an apostrophe; the starts are those of OWASP ASVS 5.0, 1.2.10, with line ends and full-width forms. What we write as a number stays a number,
/// or a sheet could not add it up: digits with a sign in front run nothing.
/// </remarks>
internal static class Csv
{
    private const string FormulaStarts = "=+-@\t\r\n\0＝＋－＠";

    // Half a line end within a text breaks the row for some readers, so it is quoted like a whole one.
    private static readonly CsvConfiguration Lines = new(CultureInfo.InvariantCulture)
    {
        NewLine = "\r\n",
        ShouldQuote = field => ConfigurationFunctions.ShouldQuote(field) || field.Field?.AsSpan().ContainsAny('\r', '\n') == true,
    };

    internal static string Write(IEnumerable<string> columns, IEnumerable<IEnumerable<CsvCell>> rows)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = new CsvWriter(text, Lines))
        {
            foreach (var row in rows.Prepend(columns.Select(c => (CsvCell)c)))
            {
                foreach (var cell in row)
                {
                    csv.WriteField(Harmless(cell));
                }

                csv.NextRecord();
            }
        }

        return text.ToString();
    }

    internal static CsvCell Number(decimal value) => new(value.ToString("0.####", CultureInfo.InvariantCulture), IsNumber: true);

    private static string Harmless(CsvCell cell) => !cell.IsNumber && cell.Text.Length > 0 && FormulaStarts.Contains(cell.Text[0]) ? $"'{cell.Text}" : cell.Text;
}
