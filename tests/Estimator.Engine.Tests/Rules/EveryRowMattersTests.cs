using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Estimator.Engine.Rules;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Rules;

/// <summary>
/// Each cell of each rule table is held by something outside it: the reference files, or the expectations of tests/data/rules/expected_cells.csv,
/// written out with the source of each. A cell that could change unnoticed fails here.
/// </summary>
public sealed class EveryRowMattersTests
{
    public static TheoryData<string> Tables() => [.. RuleTable.Ids];

    [Theory]
    [MemberData(nameof(Tables))]
    public void Cell_OfEachRow_IsNoticedWhenItChanges(string id)
    {
        var text = TextOf(id);
        Guard(RuleTable.Read(id, text));
        var unnoticed = new List<string>();
        var rows = JsonNode.Parse(text)!["rows"]!.AsArray();
        for (var r = 0; r < rows.Count; r++)
        {
            foreach (var column in rows[r]!["cells"]!.AsObject().Select(c => c.Key).ToList())
            {
                var changed = JsonNode.Parse(text)!;
                var cells = changed["rows"]![r]!["cells"]!.AsObject();
                cells[column] = Changed(cells[column]);
                if (!Noticed(id, changed.ToJsonString()))
                {
                    unnoticed.Add($"{rows[r]!["key"]}.{column}");
                }
            }
        }

        Assert.True(unnoticed.Count == 0, $"{id}: nothing notices a change of {string.Join(", ", unnoticed)}");
    }

    [Fact]
    public void Expectations_OfCells_NameCellsThatExist()
    {
        foreach (var row in Expectations)
        {
            Assert.True(RuleTable.Load(row["table"])[row["key"]].Has(row["column"]), $"{row["table"]} {row["key"]} {row["column"]}");
            Assert.NotEmpty(row["source"]);
        }
    }

    private static IReadOnlyList<IReadOnlyDictionary<string, string>> Expectations { get; } = ReferenceCsv.Read(Path.Combine(TestData.Root, "rules", "expected_cells.csv"));

    private static void Guard(RuleTable table)
    {
        if (Compare.Knows(table.Id))
        {
            Compare.Table(table);
            return;
        }

        foreach (var row in Expectations.Where(e => e["table"] == table.Id))
        {
            var cell = table[row["key"]];
            var found = cell.Flag(row["column"]) ? "true" : !cell.Has(row["column"]) ? "" : Shown(cell, row["column"]);
            Assert.Equal(row["value"], found);
        }
    }

    private static string Shown(RuleRow row, string column)
    {
        try
        {
            return row.Number(column).ToString("0.######", CultureInfo.InvariantCulture);
        }
        catch (InvalidDataException)
        {
            return WordOrNo(row, column);
        }
    }

    private static string WordOrNo(RuleRow row, string column)
    {
        try
        {
            return row.Text(column);
        }
        catch (InvalidDataException)
        {
            return "false";
        }
    }

    private static bool Noticed(string id, string json)
    {
        try
        {
            Guard(RuleTable.Read(id, json));
            return false;
        }
        catch (Exception e) when (e is Xunit.Sdk.XunitException or InvalidDataException)
        {
            return true;
        }
    }

    private static JsonNode? Changed(JsonNode? cell) => cell?.GetValueKind() switch
    {
        JsonValueKind.Number => cell.GetValue<decimal>() + 1,
        JsonValueKind.True => false,
        JsonValueKind.False => true,
        JsonValueKind.String => $"{cell.GetValue<string>()} changed",
        _ => 1,
    };

    private static string TextOf(string id)
    {
        using var stream = typeof(RuleTable).Assembly.GetManifestResourceStream($"Rules/{id}.json")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
