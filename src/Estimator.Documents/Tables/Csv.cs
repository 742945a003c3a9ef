using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace Estimator.Documents.Tables;

/// <summary>Writes CSV that a spreadsheet opens as text and numbers, never as formulas.</summary>
/// <remarks>Source: RFC 4180. Every cell that starts like a formula gets an apostrophe; the starts are those of OWASP, CSV Injection, with the full-width forms.</remarks>
internal static class Csv
{
    private static readonly CsvConfiguration Harmless = new(CultureInfo.InvariantCulture)
    {
        NewLine = "\r\n",
        InjectionOptions = InjectionOptions.Escape,
        InjectionCharacters = ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠'],
    };

    internal static string Write(IEnumerable<string> columns, IEnumerable<IEnumerable<string>> rows)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = new CsvWriter(text, Harmless))
        {
            foreach (var row in rows.Prepend(columns))
            {
                foreach (var cell in row)
                {
                    csv.WriteField(cell);
                }

                csv.NextRecord();
            }
        }

        return text.ToString();
    }

    internal static string Number(decimal value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
