using Estimator.Engine.Rules;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Rules;

/// <summary>
/// tests/data/rules/coverage.csv has a line for each line of the collected rules, by section and article, with the finding that judges it and the tests that hold
/// it, or its line in the table of what is not judged. Nothing is left between the two.
/// </summary>
public sealed class CoverageTests
{
    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Lines = ReferenceCsv.Read(Path.Combine(TestData.Root, "rules", "coverage.csv"));

    [Fact]
    public void Checks_OfEachLine_StandInTheTables()
    {
        var (judged, unjudged) = (Keys(JudgedRules.All), Keys(UnjudgedRules.All));
        // Said where a day is not stated, and not a rule of its own.
        judged.Add("permit-date");
        Assert.All(Lines, l => Assert.All(l["checks"].Split(';'), c => Assert.Contains(c, l["verdict"] == "judged" ? judged : unjudged)));
        Assert.All(Lines, l => Assert.Contains(l["verdict"], new[] { "judged", "unjudged" }));
    }

    [Fact]
    public void Tests_OfEachJudgedLine_Exist()
    {
        var classes = Directory.EnumerateFiles(Path.Combine(TestData.Repository, "tests"), "*.cs", SearchOption.AllDirectories).Select(f => Path.GetFileNameWithoutExtension(f)).ToHashSet(StringComparer.Ordinal);
        foreach (var line in Lines)
        {
            var tests = line["tests"].Split(';', StringSplitOptions.RemoveEmptyEntries);
            Assert.True(line["verdict"] == "judged" ? tests.Length > 0 : tests.Length == 0, line["article"]);
            Assert.All(tests, t => Assert.Contains(t, classes));
        }
    }

    // What no line of the file names would be judged without a source, or listed for nothing.
    [Fact]
    public void Tables_OfJudgedAndUnjudged_AreNamedByLines()
    {
        var named = Lines.SelectMany(l => l["checks"].Split(';')).ToHashSet(StringComparer.Ordinal);
        named.UnionWith(["service-load", "312.8"]);
        Assert.Subset(named, Keys(JudgedRules.All));
        Assert.Subset(named, Keys(UnjudgedRules.All));
    }

    [Fact]
    public void Rules_ByEdition_HaveFindingsThatAreListed()
    {
        var judged = Keys(JudgedRules.All);
        Assert.All(CodeRules.All, r => Assert.Contains(CodeRules.CodeOf(r), judged));
        Assert.Subset(CodeRules.All.Select(CodeRules.CodeOf).ToHashSet(StringComparer.Ordinal), judged);
    }

    private static HashSet<string> Keys(IEnumerable<RuleRow> rows) => rows.Select(r => r.Key).ToHashSet(StringComparer.Ordinal);
}
