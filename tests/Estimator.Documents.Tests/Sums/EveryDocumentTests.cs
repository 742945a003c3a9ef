using System.Reflection;
using Estimator.Documents.Papers;
using Estimator.Documents.Tables;
using Estimator.Documents.Workbooks;

namespace Estimator.Documents.Tests.Sums;

/// <summary>Each document that can be written has a test which proves over random jobs that its printed lines add up to its printed totals, or a reason why it prints none.</summary>
public sealed class EveryDocumentTests
{
    /// <summary>What prints no sum of its lines.</summary>
    private static readonly Dictionary<string, string> NoSums = new(StringComparer.Ordinal)
    {
        ["CustomerWorkbook"] = "price and range alone, no line with an amount; the bid workbook's sheet of that name follows its costs",
        ["JobTable.Takeoff"] = "items of different units",
        ["JobTable.Labor"] = "rows alone",
        ["JobTable.CutPlan"] = "rows alone",
        ["JobTable.Circuits"] = "rows alone",
        ["JobTable.Loads"] = "the lines of the permit's paper, which proves them",
        ["JobTable.Devices"] = "rows alone",
        ["JobTable.Findings"] = "sentences",
        ["JobTable.Range"] = "factors move together and do not add up",
        ["JobTable.PullList"] = "rows alone",
        ["JobTable.Boxes"] = "rows alone",
        ["JobTable.BoxContents"] = "rows alone",
        ["JobTable.Tools"] = "rows alone",
        ["JobTable.Tests"] = "rows alone",
        ["JobTable.Explanations"] = "each node is recomputed from its inputs elsewhere",
        ["JobTable.Alternates"] = "one or the other is taken",
        ["JobTable.UnitPrices"] = "rows alone",
    };

    [Fact]
    public void EachDocument_HasAProofOfItsSums_OrNone()
    {
        var proven = typeof(EveryDocumentTests).Assembly.GetTypes().SelectMany(t => t.GetMethods()).Where(m => m.GetCustomAttributes<FactAttribute>().Any())
            .SelectMany(m => m.GetCustomAttributes<AddsUpAttribute>()).Select(a => a.Document).Distinct(StringComparer.Ordinal).ToList();
        Assert.Empty(proven.Intersect(NoSums.Keys, StringComparer.Ordinal));
        Assert.Equal(Documents.Order(StringComparer.Ordinal), proven.Concat(NoSums.Keys).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void DocumentWithoutSums_HasNoRowThatIsCalledTotal()
    {
        foreach (var table in Enum.GetValues<JobTable>().Where(t => NoSums.ContainsKey($"JobTable.{t}") && t is not (JobTable.Explanations or JobTable.Loads)))
        {
            Assert.DoesNotContain(CsvTable.Read(SampleEstimates.House, table), r => r.Values.Any(c => c.Equals("total", StringComparison.OrdinalIgnoreCase) || c.StartsWith("All ", StringComparison.Ordinal)));
        }
    }

    // What writes a file; papers, workbooks and tables that are chosen by a word stand under theirs.
    private static IEnumerable<string> Documents
    {
        get
        {
            var writers = typeof(Letterhead).Assembly.GetExportedTypes().Where(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly).Any(m => m.Name == "Write" && (m.ReturnType == typeof(byte[]) || m.ReturnType == typeof(string))))
                .Select(t => t.Name).Except([nameof(JobPapers), nameof(JobWorkbooks), nameof(JobTables)]).ToList();
            Assert.All(Enum.GetNames<JobPaper>().Select(n => $"{n}Paper").Concat(Enum.GetNames<JobWorkbook>().Select(n => $"{n}Workbook")), w => Assert.Contains(w, writers));
            return writers.Concat(Enum.GetNames<JobTable>().Select(n => $"JobTable.{n}"));
        }
    }
}
