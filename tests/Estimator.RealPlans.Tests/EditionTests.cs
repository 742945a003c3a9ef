using Estimator.Engine;
using Estimator.Engine.Findings;
using Estimator.Engine.House;

namespace Estimator.RealPlans.Tests;

/// <summary>Every plan under every edition: what is found differs only where the editions do, and a fresh proposal lacks nothing that it could have had.</summary>
public sealed class EditionTests
{
    private static readonly CodeEdition[] Editions = [CodeEdition.Nec2017, CodeEdition.Nec2020, CodeEdition.Nec2023, CodeEdition.Nec2026];

    // Code and article of each finding that may differ between editions, with the section and line of the collected rules that says why.
    private static readonly (string Code, string Article, string Pack)[] Different =
    [
        ("required-receptacle", "210.52(E)(3)", "3: 210.52(E)(3), reached from inside in 2017, any beside the dwelling from 2020"),
        ("tub-zone", "406.9(C)", "3: 406.9(C), within or over the tub in 2017, 3 ft from 2020, the space below from 2023"),
        ("lighting-outlet", "210.70(A)(1)", "4: 210.70(A)(1), laundry areas join in 2023"),
        ("alarm-near-cooking", "IRC R314.3.1", "11: R314.3.3, numbered R314.3.1 in 2018"),
        ("alarm-near-cooking", "IRC R314.3.3", "11: R314.3.3, struck from 2024"),
        ("voltage-drop", "210.19 note", "6: kitchens and basements, more outlets need ground-fault protection, so circuits are divided otherwise"),
    ];

    public static TheoryData<string> Names() => PlanFolder.Names();

    [Theory]
    [MemberData(nameof(Names))]
    public void Findings_OfOneHouse_DifferOnlyWhereEditionsDo(string name)
    {
        var job = PlanFolder.Job(name, CodeEdition.Nec2017);
        var found = Editions.Select(e => Found(job with { Code = job.Code with { Edition = e } })).ToList();
        var unlike = found.SelectMany(f => f).Distinct().Where(f => found.Any(o => o.Count(x => x == f) != found[0].Count(x => x == f)));
        Assert.DoesNotContain(unlike, u => !Different.Any(d => (d.Code, d.Article) == (u.Code, u.Article)));
    }

    // Where no spot beside the basin lies outside the zone of the tub, 2020 has no exception and no proposal can help.
    [Theory]
    [MemberData(nameof(Names))]
    public void Proposal_UnderEachEdition_HasNothingToMend(string name)
    {
        foreach (var edition in Editions)
        {
            var mandatory = JobEstimate.Compute(PlanFolder.Job(name, edition), PlanFolder.Catalogue).Findings.Where(f => f.Severity is Severity.Mandatory).ToList();
            Assert.Empty(mandatory.Where(f => (edition, f.Code) != (CodeEdition.Nec2020, "tub-zone")).Select(f => $"{edition} {f.Code}: {f.Text}"));
        }
    }

    private static List<(string Code, string Article, string Where, Severity Severity)> Found(Job job) =>
        [.. JobEstimate.Compute(job, PlanFolder.Catalogue).Findings.Where(f => f.Severity is Severity.Mandatory or Severity.Advice && f.Article.Length > 0).Select(f => (f.Code, f.Article, string.Join(' ', f.Where), f.Severity))];
}
