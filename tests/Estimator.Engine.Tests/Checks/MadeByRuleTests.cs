using Estimator.Engine.Checks;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Checks;

/// <summary>Bundles by NEC 334.80 and table 310.15(C)(1), receptacles by table 210.21(B)(3).</summary>
public sealed class MadeByRuleTests
{
    // Of 12 AWG, 30 A at 90 C: 8 conductors at 70% carry 21 A and hold a breaker of 20 A, 10 at 50% carry 15 A and do not. Of 10 AWG, 40 A: 6 at 80% carry
    // 32 A and hold 30 A, 8 at 70% carry 28 A and do not.
    [Theory]
    [InlineData(1440, 4)]
    [InlineData(5000, 3)]
    public void Bundle_OfACable_IsAsLargeAsItsBreakerLets(int loadVa, int most)
    {
        var estimate = SmallJobs.Estimate(With(6, loadVa));
        var finding = Assert.Single(estimate.Findings, f => f.Code == "bundled-cable");
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Contains($"6 cables leave panel P1: let no more than {most} lie side by side", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Bundle_WhereFewCablesLeave_IsHeld()
    {
        var estimate = SmallJobs.Estimate(With(3, 1440));
        Assert.DoesNotContain(estimate.Findings, f => f.Code == "bundled-cable");
        Assert.Contains(HeldRules.Of(estimate.AppliedRules, estimate.Findings), r => r.Key == "bundled-cable");
    }

    // 20 A circuit: 15 or 20 A; 30 A: 30; 40 A: 40 or 50; 50 A: 50.
    [Theory]
    [InlineData(20, "20")]
    [InlineData(30, "30")]
    [InlineData(40, "50")]
    [InlineData(50, "50")]
    public void Receptacle_OfAnAppliance_HasARatingThatItsCircuitMayHave(int breakerA, string rating)
    {
        var job = With(1, 4000) is var made ? made with
        {
            Equipment = [made.Equipment[0] with { Kind = EquipmentKind.Range, Connection = Connection.Receptacle }],
            Pins = new Pins { Circuits = [new PinnedCircuit { Id = "own", Panel = "P1", BreakerA = Current.FromAmperes(breakerA), Outlets = ["E1"] }] },
        } : made;
        var estimate = SmallJobs.Estimate(job);
        Assert.Contains(estimate.Takeoff.Lines, l => l.Category == "device" && l.ItemId.Contains($"-{rating}", StringComparison.Ordinal));
        Assert.Contains(HeldRules.Of(estimate.AppliedRules, estimate.Findings), r => r.Key == "free-conductor");
    }

    private static Job With(int pieces, int loadVa) => SmallJobs.OneRoom(RoomKind.Utility) with
    {
        Equipment = [.. Enumerable.Range(1, pieces).Select(i => new Equipment { Id = $"E{i}", Kind = EquipmentKind.WaterHeater, Room = "R1", LoadVa = Power.FromVoltAmperes(loadVa) })],
    };
}
