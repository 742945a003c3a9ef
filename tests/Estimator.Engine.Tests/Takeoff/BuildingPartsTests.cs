using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.TestKit;
using Estimator.TestKit.Editions;

namespace Estimator.Engine.Tests.Takeoff;

/// <summary>
/// A building 24 ft from the house. Cover by NEC table 300.5, one supply by 225.30, disconnect by 225.31, electrodes by 250.32(A), all from memory; sleeves are
/// common practice, no source.
/// </summary>
public sealed class BuildingPartsTests
{
    private static readonly Job Shed = Situations.Of("shed_apart_without_light", CodeEdition.Nec2023);

    private static readonly Job Garage = Situations.Of("garage_apart_on_a_panel_of_60_a", CodeEdition.Nec2023);

    [Fact]
    public void Trench_BetweenFacingWalls_IsTheGapOnThePlan()
    {
        var estimate = SmallJobs.Estimate(Shed);
        Assert.Equal(24m, Quantity(estimate, "trench"));
        var run = Assert.Single(estimate.Wiring.Runs, r => r.Path.Trench is not null);
        Assert.Equal((RunWay.Underground, WiringMethod.Uf), (run.Path.Way, run.Cable.Method));
        Assert.Equal(Length.FromFeet(24), run.Path.Trench!.Value.AsLength().Value);
    }

    // The panel hangs on the west wall, 5 ft up and 1 ft from the corner; the receptacle's box is 16 in above the floor. Over the joists or along the walls the
    // way inside is at least straight across to the trench, and what goes down ends 24 in, or under a driveway 18 in, below grade at both ends.
    [Theory]
    [InlineData(null, false, 24)]
    [InlineData(null, true, 18)]
    [InlineData(WiringMethod.BuriedConduit, false, 18)]
    public void Depth_OfTheTrench_FollowsWhatLiesInIt(WiringMethod? buried, bool driveway, int inches)
    {
        var run = Assert.Single(SmallJobs.Estimate(With(Shed, b => b with { Buried = buried, UnderDriveway = driveway })).Wiring.Runs, r => r.Path.Trench is not null);
        Assert.Equal(-Length.FromInches(inches).ToSixteenths(), run.Path.Turns.Min(t => t.Height));
    }

    [Fact]
    public void Trench_OfSeveralRuns_IsDugOnce()
    {
        var estimate = SmallJobs.Estimate(Situations.Of("garage_apart_on_two_circuits", CodeEdition.Nec2023));
        Assert.True(estimate.Wiring.Runs.Count(r => r.Path.Trench is not null) >= 2);
        Assert.Equal(24m, Quantity(estimate, "trench"));
    }

    [Fact]
    public void Trench_ThatTheUserStates_IsTakenForTheDistance()
    {
        var near = SmallJobs.Estimate(Shed);
        var far = SmallJobs.Estimate(With(Shed, b => b with { Trench = Length.FromFeet(90) }));
        Assert.Equal(90m, Quantity(far, "trench"));
        Assert.Equal(Length.FromFeet(90 - 24), Through(far) - Through(near));
    }

    [Fact]
    public void Circuit_ToABuilding_TakesSleevesAndADisconnect()
    {
        var estimate = SmallJobs.Estimate(Shed);
        Assert.Equal((8m, 4m, 2m, 1m), (Quantity(estimate, "pvc-3_4"), Quantity(estimate, "pvc-3_4-strap"), Quantity(estimate, "pvc-3_4-body"), Quantity(estimate, "building-disconnect")));
        Assert.Equal(0m, Quantity(estimate, "ground-rod"));
        Assert.Contains(estimate.Findings, f => f.Code == "dig-safely");
    }

    [Fact]
    public void Panel_InABuilding_FeedsItAndTakesElectrodes()
    {
        var estimate = SmallJobs.Estimate(Garage);
        Assert.All(estimate.Wiring.Circuits.Where(c => c.Boxes.Any(b => estimate.Layout.House.Rooms[estimate.Wiring.Boxes[b].Place.Room].Source.Building is not null)), c => Assert.Equal("P2", estimate.Layout.Panels[c.Panel].Source.Id));
        Assert.Equal((2m, 0m, 24m), (Quantity(estimate, "ground-rod"), Quantity(estimate, "building-disconnect"), Quantity(estimate, "trench")));
        var feeder = Assert.Single(estimate.Wiring.Feeders);
        Assert.Equal((RunWay.Underground, WiringMethod.BuriedConduit), (feeder.Path.Way, feeder.Method));
        Assert.True(Quantity(estimate, "pvc-1") + Quantity(estimate, "pvc-3_4") + Quantity(estimate, "pvc-1-1_4") > 24m);
    }

    [Fact]
    public void Cable_InABuildingWithAPanel_LeavesItNotAgain()
    {
        var estimate = SmallJobs.Estimate(Garage);
        Assert.All(estimate.Wiring.Runs, r => Assert.Null(r.Path.Trench));
    }

    [Fact]
    public void Room_OfABuildingThatIsNotStated_IsRefusedWithItsPlace()
    {
        var refused = JobFile.Read(JobFile.Write(Shed with { Buildings = [] }), "job.json");
        var problem = Assert.Single(refused.Problems);
        Assert.Equal("$.levels[0].rooms[1].building", problem.Path);
    }

    private static Job With(Job job, Func<Building, Building> change) => job with { Buildings = [change(job.Buildings[0])] };

    private static Length Through(JobEstimate estimate) => estimate.Wiring.Runs.Single(r => r.Path.Trench is not null).Path.Horizontal.AsLength().Value;

    private static decimal Quantity(JobEstimate estimate, string item) => estimate.Takeoff.Lines.Where(l => l.ItemId == item).Sum(l => l.Quantity.Value);
}
