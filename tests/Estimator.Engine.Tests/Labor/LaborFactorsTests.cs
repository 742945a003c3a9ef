using Estimator.Engine.Catalogue;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Labor;

/// <summary>Factors by hand. Every factor: common practice, no source, but overtime (an opinion inside the published span).</summary>
public sealed class LaborFactorsTests
{
    private const string Receptacle = "receptacle-15";

    // Six receptacles at 0.20: fished 2.4, in plaster 2.5 times 1.2 = 3.0 and not 2 x 2.5 times.
    [Theory]
    [InlineData(WallBuild.WoodStuds, 2.4)]
    [InlineData(WallBuild.PlasterAndLath, 3.0)]
    [InlineData(WallBuild.MetalStuds, 2.64)]
    [InlineData(WallBuild.FurredMasonry, 3.0)]
    public void FinishedWalls_OfEachBuild_ActOnRoughInAlone(WallBuild build, double roughIn)
    {
        var estimate = SmallJobs.Estimate(Open.With(r => r with { Walls = WallState.Finished, WallBuild = build }));
        Assert.Equal((decimal)roughIn, Hours(estimate, Receptacle, WorkPhase.RoughIn));
        Assert.Equal(1.2m, Hours(estimate, Receptacle, WorkPhase.TrimOut));
    }

    [Theory]
    [InlineData(WallBuild.PlasterAndLath, 1.2)]
    [InlineData(WallBuild.MetalStuds, 1.32)]
    public void OpenWalls_OfEachBuild_HaveNoPlaster(WallBuild build, double roughIn) =>
        Assert.Equal((decimal)roughIn, Hours(SmallJobs.Estimate(Open.With(r => r with { WallBuild = build })), Receptacle, WorkPhase.RoughIn));

    // The whole cable goes overhead from a finished room: 2 for fishing, and 1.4 for the attic, 2.8 together.
    [Fact]
    public void TightAttic_ActsOnTheCableAboveAndNothingElse()
    {
        var finished = Open.With(r => r with { Walls = WallState.Finished });
        var (plain, attic) = (SmallJobs.Estimate(finished), SmallJobs.Estimate(Framed(finished, f => f with { TightAttic = true })));
        Assert.All(attic.Wiring.Runs, r => Assert.Equal(RunWay.Overhead, r.Path.Way));
        Assert.Equal(1.4, (double)(Cable(attic) / Cable(plain)), 0.02);
        Assert.Equal(Hours(plain, Receptacle, WorkPhase.RoughIn), Hours(attic, Receptacle, WorkPhase.RoughIn));
        Assert.Equal(plain.Labor.ByPhase[WorkPhase.TrimOut].Value, attic.Labor.ByPhase[WorkPhase.TrimOut].Value);
    }

    // A crawl space slows the runs that cross it: 1.4 from 3 ft on, 1.75 below that, an alternative to it.
    [Theory]
    [InlineData(36, "crawl")]
    [InlineData(35, "low_crawl")]
    public void Crawl_ByItsHeight_ActsOnTheCableUnderTheFloor(int inches, string row)
    {
        var over = Framed(Open, f => f with { Under = UnderFloor.Crawl });
        var job = over with { Pins = new Pins { Circuits = [] } };
        var estimate = SmallJobs.Estimate(Framed(job, f => f with { CrawlHeight = Length.FromInches(inches) }));
        var below = estimate.Wiring.Runs.Count(r => r.Path.Way is RunWay.Underfloor);
        var cable = estimate.Labor.Lines.Where(l => l.ItemId.StartsWith("nm_b", StringComparison.Ordinal)).ToList();
        Assert.True(below > 0, "no run goes under the floor");
        Assert.Equal([row], cable.SelectMany(l => l.Factors).Select(f => f.Key).Distinct());
        Assert.True(Cable(estimate) > Cable(SmallJobs.Estimate(job)));
    }

    // Fishing 2, ceiling work to 16 ft 1.25, occupied 1.2 and a small job 1.2 come to 3.6: the cap of 3 stands.
    [Fact]
    public void Factors_TogetherBeyondTheCap_StopAtIt()
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.CeilingLight, 1), (DeviceKind.SinglePoleSwitch, 1));
        var high = job.With(r => r with { CeilingHeight = Length.FromFeet(14) });
        var hard = high.With(r => r with { Walls = WallState.Finished }) with { Practice = new Practice { Occupied = true, SmallJob = true } };
        var (plain, capped) = (SmallJobs.Estimate(job), SmallJobs.Estimate(hard));
        Assert.Equal(3 * Hours(plain, "luminaire-ceiling", WorkPhase.RoughIn), Hours(capped, "luminaire-ceiling", WorkPhase.RoughIn));
        Assert.Equal(1.25m * 1.2m * 1.2m * Hours(plain, "luminaire-ceiling", WorkPhase.TrimOut), Hours(capped, "luminaire-ceiling", WorkPhase.TrimOut), 2);
        Assert.Contains(capped.Labor.Lines, l => l.Factors.Any(f => f.Key == "cap"));
        Assert.Empty(ExplanationCheck.Problems(capped.Book));
    }

    [Theory]
    [InlineData("rough_in", 1.2 * 1.04)]
    [InlineData("trim_out", 1.2 * 1.04)]
    [InlineData("panel", 1.2)]
    public void FactorsOfTheJob_ActInTheirPhases(string phase, double times)
    {
        var rows = LaborFactors.Together([LaborFactors.SmallJob, LaborFactors.CarriedUp], phase);
        Assert.Equal(times, (double)rows.Aggregate(1m, (p, f) => p * f.Number()), 6);
    }

    [Theory]
    [InlineData(3, 1.1)]
    [InlineData(4, 1.2)]
    public void Overtime_ByItsWeeks_SlowsAllHours(int weeks, double times)
    {
        var tired = Open with { Bid = new BidSettings { Crew = new CrewMix { OvertimeHoursAWeek = 10, OvertimeWeeks = weeks } } };
        Assert.Equal((decimal)times * 1.2m, Hours(SmallJobs.Estimate(tired), Receptacle, WorkPhase.RoughIn));
    }

    // Counted in the cable: 1.25 h for 100 ft. Apart: 0.75 h for 100 ft and 0.015 h a bore. Never both.
    [Fact]
    public void Bores_AreInTheCableOrApart_NeverBoth()
    {
        var (within, apart) = (SmallJobs.Estimate(Open), SmallJobs.Estimate(Open with { Practice = new Practice { BoresApart = true } }));
        var bores = within.Takeoff.Lines.Single(l => l.ItemId == "bored-hole").Quantity.Value;
        Assert.DoesNotContain(within.Labor.Lines, l => l.ItemId == "bored-hole");
        Assert.Equal(decimal.Round(bores * 0.015m, 2, MidpointRounding.AwayFromZero), Hours(apart, "bored-hole", WorkPhase.RoughIn));
        Assert.Equal(0.6, (double)(Cable(apart) / Cable(within)), 0.02);
    }

    // A firm's own table that has hours for a bore is not added to cable hours that take it in.
    [Fact]
    public void Bores_OfAnOwnTable_AreNotCountedTwice()
    {
        var files = Catalogues.ShippedFiles.ToDictionary(f => f.Key, f => f.Key == "labor.csv" ? $"{f.Value}bored-hole,rough_in,9,1,own\n" : f.Value, StringComparer.Ordinal);
        var estimate = JobEstimate.Compute(Open, PartsCatalogue.Read(files).Value);
        Assert.Equal(SmallJobs.Estimate(Open).Labor.Total.Value, estimate.Labor.Total.Value);
    }

    // Three bedrooms alike: two of them at 0.95. The third gets a receptacle more and is priced in full, and the finding says so beforehand.
    [Fact]
    public void RepeatedRooms_AreFound_AndEndWithADeviceMore()
    {
        var three = Rooms(6, 6, 6);
        Assert.Empty(SmallJobs.Estimate(three).Labor.Findings);
        var counted = three with { Practice = new Practice { RepeatedRooms = true } };
        var estimate = SmallJobs.Estimate(counted);
        Assert.Equal(["R2", "R3"], estimate.Labor.Findings.Single().Where);
        Assert.Equal(6 * 0.2m * (1 + 0.95m + 0.95m), Hours(estimate, Receptacle, WorkPhase.TrimOut));
        Assert.Equal(["R2"], SmallJobs.Estimate(Rooms(6, 6, 7) with { Practice = counted.Practice }).Labor.Findings.Single().Where);
    }

    private static Job Open { get; } = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 6));

    private static Job Framed(Job job, Func<LevelFraming, LevelFraming> change) => job with { Levels = [.. job.Levels.Select(l => l with { Framing = change(l.Framing) })] };

    private static Job Rooms(params ReadOnlySpan<int> receptacles)
    {
        var first = Open.Levels[0].Rooms[0];
        List<Room> rooms = [];
        foreach (var count in receptacles)
        {
            rooms.Add(first with
            {
                Id = FormattableString.Invariant($"R{rooms.Count + 1}"),
                At = new GridPoint(Length.FromFeet(20 * rooms.Count), Length.Zero),
                Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = count }],
            });
        }

        return Open with { Levels = [Open.Levels[0] with { Rooms = [.. rooms] }] };
    }

    private static decimal Hours(JobEstimate estimate, string item, WorkPhase phase) =>
        estimate.Labor.Lines.Where(l => l.ItemId == item && l.Phase == phase).Sum(l => l.Hours.Value);

    private static decimal Cable(JobEstimate estimate) =>
        estimate.Labor.Lines.Where(l => l.ItemId.StartsWith("nm_b", StringComparison.Ordinal)).Sum(l => l.Hours.Value);
}
