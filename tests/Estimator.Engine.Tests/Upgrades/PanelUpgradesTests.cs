using System.Collections.Immutable;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.Engine.Upgrades;
using Estimator.Engine.Wiring;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Upgrades;

/// <summary>Ways to give a full panel room: a dryer, an oven and the receptacles of a room where one space is left.</summary>
public sealed class PanelUpgradesTests
{
    [Fact]
    public void Full_PanelWithRoom_IsNotAmongThem() => Assert.Empty(PanelUpgrades.Full(SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 4)))));

    [Fact]
    public void For_AFullPanel_EachWayLeavesEveryBreakerASpace()
    {
        var estimate = SmallJobs.Estimate(Job(tandemSpaces: 8));
        Assert.Equal("P1", Assert.Single(PanelUpgrades.Full(estimate)).Id);

        var ways = Ways(estimate);

        Assert.Equal([UpgradeKind.Tandems, UpgradeKind.Subpanel, UpgradeKind.LargerPanel], ways.Select(w => w.Upgrade.Kind).Order());
        Assert.All(ways, w => Assert.All(w.After.Schedules.Panels, s => Assert.Empty(s.Unplaced)));
        Assert.Equal(ways.Select(w => w.After.Bid.Price.Value).Order(), ways.Select(w => w.After.Bid.Price.Value));
    }

    // The panel's label allows none: only a subpanel or a larger panel are left.
    [Fact]
    public void For_APanelWithoutTandemSpaces_OffersNoTandems() =>
        Assert.DoesNotContain(Ways(SmallJobs.Estimate(Job(tandemSpaces: 0))), w => w.Upgrade.Kind is UpgradeKind.Tandems);

    [Fact]
    public void Parts_OfEachWay_AreWhatItTakes()
    {
        var ways = Ways(SmallJobs.Estimate(Job(tandemSpaces: 8))).ToDictionary(w => w.Upgrade.Kind, w => w.Added.Select(a => a.ItemId).ToList());
        Assert.Contains("breaker-tandem-15", ways[UpgradeKind.Tandems]);
        Assert.Contains("panel-60", ways[UpgradeKind.Subpanel]);
        Assert.Contains("nm_b-6-3", ways[UpgradeKind.Subpanel]);
        Assert.Contains("circuit-moved", ways[UpgradeKind.Subpanel]);
        Assert.Contains("panel-200", ways[UpgradeKind.LargerPanel]);
        Assert.Contains("meter-base-200", ways[UpgradeKind.LargerPanel]);
        Assert.Contains("circuit-landed", ways[UpgradeKind.LargerPanel]);
    }

    // One edit, which can be undone, and a file that reads again.
    [Fact]
    public void Applied_EachWay_IsAnEditThatReadsAgain()
    {
        var job = Job(tandemSpaces: 8);
        foreach (var way in Ways(SmallJobs.Estimate(job)))
        {
            var after = way.Upgrade.Applied(job);
            Assert.Empty(JobFile.Read(JobFile.Write(after), "after.json").Problems);
            var edit = JobEditing.Between(job, after, "e", way.Upgrade.Title);
            Assert.Equal(JobFile.Write(after), JobFile.Write(JobEditing.Apply(job, edit).Job));
        }
    }

    private static ImmutableArray<PricedUpgrade> Ways(JobEstimate estimate) => PanelUpgrades.For(estimate, "P1", Catalogues.Shipped, SearchDepth.Thorough);

    // 20 spaces: 19 of them taken by circuits of 15 A that are there.
    private static Job Job(int tandemSpaces)
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 4));
        var there = Enumerable.Range(1, 19).Select(i => new ExistingCircuit { Id = $"c{i}", Name = $"Circuit {i}", BreakerA = Current.FromAmperes(15) });
        return job with
        {
            Panels = [job.Panels[0] with { TandemSpaces = tandemSpaces, Circuits = [.. there] }],
            Equipment =
            [
                new Equipment { Id = "dryer", Kind = EquipmentKind.Dryer, Room = "R1" },
                new Equipment { Id = "oven", Kind = EquipmentKind.Oven, Room = "R1" },
            ],
        };
    }
}
