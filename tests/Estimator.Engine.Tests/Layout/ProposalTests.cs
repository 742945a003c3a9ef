using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.TestKit;
using Estimator.TestKit.Editions;

namespace Estimator.Engine.Tests.Layout;

/// <summary>A freshly proposed house asks for nothing that the proposal could have had.</summary>
public sealed class ProposalTests
{
    private static readonly CodeEdition[] Editions = [CodeEdition.Nec2017, CodeEdition.Nec2020, CodeEdition.Nec2023, CodeEdition.Nec2026];

    public static TheoryData<string> Houses() => ["house_with_front_receptacle", "stair_switched_below_alone", "garage_door_to_bedroom_floor", "furnace_without_receptacle", "deck_without_door", "island_bare", "utility_dark"];

    [Theory]
    [MemberData(nameof(Houses))]
    public void Propose_OfEmptyRooms_LeavesNothingToMend(string situation)
    {
        foreach (var edition in Editions)
        {
            var bare = Situations.Of(situation, edition).With(r => r with { Counts = [], Placed = [] }) with { Controls = [] };
            var mandatory = SmallJobs.Estimate(CodeMinimum.Propose(bare)).Findings.Where(f => f.Severity is Severity.Mandatory);
            Assert.Empty(mandatory.Select(f => $"{edition} {f.Code}: {f.Text}"));
        }
    }

    // A town that wants 8 ft between wall receptacles, 4 ft round tubs or three small-appliance circuits gets them proposed.
    [Theory]
    [InlineData("bedroom_two_receptacles", "receptacle-spacing", 96)]
    [InlineData("tub_receptacle_8_ft_away", "tub-zone", 48)]
    [InlineData("counter_8_ft_with_one", "required-circuits", 3)]
    public void Propose_UnderARaisedFigure_HoldsIt(string situation, string rule, int figure)
    {
        var job = Situations.Of(situation, CodeEdition.Nec2023).With(r => r with { Counts = [], Placed = [] });
        job = job with { Code = job.Code with { Amendments = [new Amendment { Id = "a", Kind = AmendmentKind.Raise, Rule = rule, Value = figure }] } };
        var estimate = SmallJobs.Estimate(CodeMinimum.Propose(job));
        Assert.Contains(rule, estimate.AppliedRules);
        Assert.DoesNotContain(estimate.Findings, f => f.Code == rule && f.Severity is Severity.Mandatory);
    }
}
