using System.Globalization;
using System.Text.Json.Nodes;
using CsvHelper;
using Estimator.Engine.Catalogue;

namespace Estimator.Cli.Tests.BadInput;

/// <summary>Text of a job or a catalogue never becomes a formula of the spreadsheet that opens our CSV files.</summary>
/// <remarks>Source of the characters: OWASP, CSV Injection.</remarks>
public sealed class CsvFormulaTests : IDisposable
{
    private const string Starts = "=+-@\t\r\n＝＋－＠";

    private readonly string _folder = Directory.CreateTempSubdirectory("csv-formulas").FullName;

    public static TheoryData<char> FormulaStarts => [.. Starts];

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(FormulaStarts))]
    public void Takeoff_TextThatStartsLikeAFormula_IsWrittenAsText(char start) => AssertHarmless(Csv("takeoff", start), start, "description", "where");

    [Theory]
    [MemberData(nameof(FormulaStarts))]
    public void Buy_TextThatStartsLikeAFormula_IsWrittenAsText(char start) => AssertHarmless(Csv("buy", start), start, "description", "supplier", "note");

    // Every cell is harmless, and the text that was put in stands in each column, so that an empty file can't pass.
    private static void AssertHarmless(IReadOnlyList<IReadOnlyDictionary<string, string>> rows, char start, params string[] columns)
    {
        Assert.All(columns, column => Assert.Contains(rows, r => r[column].StartsWith($"'{start}1+1", StringComparison.Ordinal)));
        Assert.All(rows.SelectMany(r => r.Values).Where(v => v.Length > 0), v => Assert.DoesNotContain(v[0], Starts));
    }

    private IReadOnlyList<IReadOnlyDictionary<string, string>> Csv(string verb, char start)
    {
        var (job, output) = (Path.Combine(_folder, "job.json"), Path.Combine(_folder, "out.csv"));
        File.WriteAllText(job, JobWithRoom($"{start}1+1"));
        using var error = new StringWriter();
        Verbs.Run([verb, job, "--csv", output, "--catalog", Catalogue($"{start}1+1")], TextReader.Null, TextWriter.Null, error);
        Assert.Equal("", error.ToString());
        return TestKit.ReferenceCsv.Read(output);
    }

    private static string JobWithRoom(string id)
    {
        var text = JsonNode.Parse(Samples.Read("basement-finish"))!.ToJsonString();
        foreach (var field in (string[])["id", "room", "other_room"])
        {
            text = text.Replace($"\"{field}\":\"family\"", $"\"{field}\":{JsonValue.Create(id).ToJsonString()}", StringComparison.Ordinal);
        }

        return text;
    }

    private string Catalogue(string text)
    {
        foreach (var name in PartsCatalogue.FileNames)
        {
            var rows = Read(Resources.Read($"catalog/{name}"));
            using var writer = new CsvWriter(new StreamWriter(Path.Combine(_folder, name)), CultureInfo.InvariantCulture);
            foreach (var (row, i) in rows.Select((r, i) => (r, i)))
            {
                foreach (var (cell, c) in row.Select((x, c) => (x, c)))
                {
                    writer.WriteField(i > 0 && rows[0][c] is "description" or "supplier" or "note" ? text : cell);
                }

                writer.NextRecord();
            }
        }

        return _folder;
    }

    private static List<string[]> Read(string text)
    {
        using var parser = new CsvParser(new StringReader(text), CultureInfo.InvariantCulture);
        var rows = new List<string[]>();
        while (parser.Read())
        {
            rows.Add(parser.Record!);
        }

        return rows;
    }
}
