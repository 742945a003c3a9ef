using System.Globalization;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Rules;
using Estimator.TestKit;
using Estimator.TestKit.Editions;

namespace Estimator.Engine.Tests.Rules;

/// <summary>
/// What each edition finds in one situation and does not find in another, a line of tests/data/rules/edition_findings.csv each; its last column names the section
/// and line of the collected rules (tests/data/rules/coverage.csv) that say so.
/// </summary>
public sealed class EditionFindingsTests
{
    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Lines = ReferenceCsv.Read(Path.Combine(TestData.Root, "rules", "edition_findings.csv"));

    public static TheoryData<string> Editions() => ["NEC-2017", "NEC-2020", "NEC-2023", "NEC-2026"];

    [Theory]
    [MemberData(nameof(Editions))]
    public void Finding_OfEachSituation_IsAsTheEditionHasIt(string edition)
    {
        var wrong = Lines.Where(l => l["edition"] == edition && l["kind"] == "finding").GroupBy(l => l["situation"]).SelectMany(Wrong).ToList();
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    [Theory]
    [MemberData(nameof(Editions))]
    public void Protection_OfEachOutlet_IsAsTheEditionHasIt(string edition)
    {
        foreach (var line in Lines.Where(l => l["edition"] == edition && l["kind"] == "outlet"))
        {
            var code = new CodeBasis
            {
                Edition = EditionOf(line["edition"]),
                PermitDate = line["permit_date"].Length > 0 ? DateOnly.ParseExact(line["permit_date"], "yyyy-MM-dd", CultureInfo.InvariantCulture) : null,
            };
            var rule = line["code"] == "ground_fault" ? ProtectionRules.GroundFault(code, Outlets.Of(line["situation"])) : ProtectionRules.ArcFault(code, Outlets.Of(line["situation"]));
            var found = rule.Required ? $"asked {rule.Article} {(rule.Verified ? "yes" : "no")}" : "none";
            Assert.Equal((line["situation"], line["severity"] == "none" ? "none" : $"asked {line["article"]} {line["verified"]}"), (line["situation"], found));
        }
    }

    [Fact]
    public void Lines_OfTheFile_CoverDifferencesAndTheirAbsence()
    {
        Assert.True(Lines.Count >= 80);
        Assert.All(Lines, l => Assert.Matches("^[0-9]+: .+", l["pack"]));
        var situations = Lines.GroupBy(l => (l["kind"], l["situation"], l["code"], l["permit_date"])).ToList();
        Assert.True(situations.Count(s => s.Select(l => (l["article"], l["severity"], l["verified"])).Distinct().Count() > 1) > 20);
        Assert.True(situations.Count(s => s.Select(l => l["severity"]).Distinct().Count() == 1) > 20);
        Assert.All(Situations.Names, n => Assert.Contains(Lines, l => l["situation"] == n));
        Assert.All(Outlets.Names, n => Assert.Contains(Lines, l => l["situation"] == n));
    }

    private static IEnumerable<string> Wrong(IGrouping<string, IReadOnlyDictionary<string, string>> situation)
    {
        var edition = EditionOf(situation.First()["edition"]);
        var findings = SmallJobs.Estimate(Situations.Of(situation.Key, edition)).Findings;
        foreach (var line in situation)
        {
            var found = findings.Where(f => f.Code == line["code"] && f.Article == line["article"]).ToList();
            var expected = line["severity"] == "none" ? found.Count == 0 : found.Any(f => Word(f) == (line["severity"], line["verified"]) && !f.Where.IsEmpty && f.Where.All(w => w.Length > 0) && f.Edition.Contains($"{(int)edition}", StringComparison.Ordinal));
            if (!expected)
            {
                yield return $"{line["edition"]} {line["situation"]}: expected {line["code"]} {line["article"]} {line["severity"]} {line["verified"]}; found {string.Join("; ", findings.Where(f => f.Code == line["code"]).Select(f => $"{f.Article} {Word(f)}"))}.";
            }
        }
    }

    private static (string Severity, string Verified) Word(Finding finding) => (finding.Severity.ToString().ToLowerInvariant(), finding.Verified ? "yes" : "no");

    private static CodeEdition EditionOf(string word) => Enum.Parse<CodeEdition>(word.Replace("NEC-", "Nec", StringComparison.Ordinal));
}
