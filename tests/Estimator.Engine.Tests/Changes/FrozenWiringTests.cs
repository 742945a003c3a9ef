using System.Collections.Concurrent;
using System.Globalization;
using Estimator.Engine.Changes;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Engine.Tests.Changes;

/// <summary>What was sold, or is in the wall, stays; what comes later is wired beside it.</summary>
public sealed class FrozenWiringTests
{
    private const int Houses = 80;

    [Fact]
    public void Pin_OfARandomHouse_ChangesNoQuantityAndNoPrice() => Each((job, problems) =>
    {
        var estimate = SmallJobs.Estimate(job);
        var frozen = SmallJobs.Estimate(FrozenWiring.Pin(estimate));
        foreach (var difference in Quantities(estimate).Except(Quantities(frozen)).Concat(Quantities(frozen).Except(Quantities(estimate))))
        {
            problems.Enqueue(difference);
        }
    });

    [Fact]
    public void Pin_OfARandomHouse_IsAJobFileInOrder() => Each((job, problems) =>
    {
        var frozen = FrozenWiring.Pin(SmallJobs.Estimate(job));
        var read = JobFile.Read(JobFile.Write(frozen), "frozen.json");
        if (!read.Ok)
        {
            problems.Enqueue(string.Join("; ", read.Problems));
        }
    });

    [Fact]
    public void Pin_OfMultiwireCircuits_KeepsTheirCommonHomeRuns()
    {
        var pairs = 0;
        Each((job, problems) =>
        {
            var estimate = SmallJobs.Estimate(job with { Practice = job.Practice with { Multiwire = MultiwireUse.Every }, PlanningCosts = job.PlanningCosts with { Breaker = Money.FromDollars(0.01m) } });
            Interlocked.Add(ref pairs, estimate.Wiring.Circuits.Count(c => c.LeavesCommonHomeRun));
            var frozen = SmallJobs.Estimate(FrozenWiring.Pin(estimate));
            foreach (var difference in Quantities(estimate).Except(Quantities(frozen)))
            {
                problems.Enqueue(difference);
            }
        });
        Assert.True(pairs > Houses / 10, $"{pairs} pairs");
    }

    [Fact]
    public void Receptacle_AddedToAFrozenRoom_GoesOnFromTheNearestBoxOfItsCircuit()
    {
        var sold = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 4)));
        var after = SmallJobs.Estimate(FrozenWiring.Pin(sold).With(r => r with { Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 1 }] }));

        Assert.Single(after.Wiring.Circuits);
        Assert.Equal(Runs(sold), Runs(after).Intersect(Runs(sold)));
        var added = Assert.Single(after.Wiring.Runs, r => Devices(after, r.To).Contains("R1/duplex_receptacle-5"));
        Assert.True(added.From >= 0);
        // 10 to 20 ft and 0.5 to 0.7 h, common practice, no source.
        Assert.InRange(after.Takeoff.Lines.Where(l => l.Category == "cable").Sum(l => l.Quantity.Value) - sold.Takeoff.Lines.Where(l => l.Category == "cable").Sum(l => l.Quantity.Value), 5m, 20m);
        Assert.InRange(after.Labor.Total.Value - sold.Labor.Total.Value, 0.4m, 0.75m);
    }

    [Fact]
    public void Receptacle_WhereTheFrozenCircuitIsFull_MakesACircuitOfItsOwn()
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 4)) with { Practice = new Practice { OutletsPer20A = 4 } };
        var sold = SmallJobs.Estimate(job);
        var after = SmallJobs.Estimate(FrozenWiring.Pin(sold).With(r => r with { Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 1 }] }));
        Assert.Equal(2, after.Wiring.Circuits.Length);
        Assert.Equal(Runs(sold), Runs(after).Intersect(Runs(sold)));
        Assert.Equal(2, after.Wiring.Circuits.Select(c => c.Id).Distinct().Count());
    }

    [Fact]
    public void Outlets_AddedToFrozenHouses_ChangeNoRunThatWasThere() => Each((job, problems) =>
    {
        var sold = SmallJobs.Estimate(job);
        var room = sold.House.Rooms.First(r => r.Source.Kind is not (RoomKind.Void or RoomKind.Outdoors)).Source.Id;
        var after = SmallJobs.Estimate(FrozenWiring.Pin(sold).With(r => r.Id == room ? r with { Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 2 }] } : r));
        foreach (var gone in Runs(sold).Except(Runs(after)))
        {
            problems.Enqueue($"gone or changed: {gone}");
        }
    });

    [Fact]
    public void Room_AddedToAnArrangedHouse_MovesNoFrozenRun()
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 4), (DeviceKind.CeilingLight, 1)).With(r => r with { At = null }) with { };
        var sold = SmallJobs.Estimate(job);
        var frozen = FrozenWiring.Pin(sold);
        var bigger = new Room { Id = "R2", Kind = RoomKind.Bedroom, Size = new RectangleSize(Length.FromFeet(20), Length.FromFeet(18)), Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 2 }] };
        var after = SmallJobs.Estimate(frozen with { Levels = [frozen.Levels[0] with { Rooms = [.. frozen.Levels[0].Rooms, bigger] }] });
        Assert.True(after.House.Rooms.Single(r => r.Source.Id == "R1").Arranged);
        Assert.Equal(Runs(sold), Runs(after).Intersect(Runs(sold)));
    }

    [Fact]
    public void Device_TakenOutOfAFrozenHouse_LeavesEveryOtherCircuitAsItWas() => Each((job, problems) =>
    {
        var sold = SmallJobs.Estimate(job);
        if (sold.Wiring.Circuits.FirstOrDefault(c => c.Outlets > 1 && sold.Wiring.Boxes[c.Boxes[0]].Devices.Length == 1) is not { } circuit)
        {
            return;
        }

        var gone = sold.Layout.Devices[sold.Wiring.Boxes[circuit.Boxes[0]].Devices[0]].Id;
        var without = Removing.Device(FrozenWiring.Pin(sold), gone);
        Assert.True(JobFile.Read(JobFile.Write(without), "without.json").Ok);
        var after = SmallJobs.Estimate(without);
        Assert.DoesNotContain(after.Layout.Devices, d => d.Id == gone);
        var touched = circuit.SharesNeutralWith is { } partner ? [circuit.Id, sold.Wiring.Circuits[partner].Id] : (string[])[circuit.Id];
        foreach (var run in Runs(sold, c => !touched.Contains(c)).Except(Runs(after)))
        {
            problems.Enqueue($"gone or changed: {run}");
        }
    });

    private static void Each(Action<Job, ConcurrentQueue<string>> check)
    {
        var problems = new ConcurrentQueue<string>();
        Parallel.For(0, Houses, n =>
        {
            var own = new ConcurrentQueue<string>();
            check(n % 3 == 0 ? ControlHouses.Number(n, 10) : HouseGen.Number(n), own);
            foreach (var problem in own)
            {
                problems.Enqueue($"house {n}: {problem}");
            }
        });
        Assert.True(problems.IsEmpty, $"{problems.Count}\n{string.Join('\n', problems.Take(20))}");
    }

    private static IEnumerable<string> Quantities(JobEstimate estimate) => estimate.Takeoff.Lines.Select(l => string.Create(CultureInfo.InvariantCulture, $"{l.ItemId} {l.Quantity.Value}"))
        .Append(string.Create(CultureInfo.InvariantCulture, $"hours {estimate.Labor.Total.Value} price {estimate.Bid.Price.Value}"))
        .Concat(Runs(estimate));

    private static List<string> Runs(JobEstimate estimate, Func<string, bool>? circuits = null) =>
        [.. estimate.Wiring.Runs.Where(r => circuits?.Invoke(estimate.Wiring.Circuits[r.Circuit].Id) ?? true)
            .Select(r => string.Create(CultureInfo.InvariantCulture, $"{Ends(estimate, r)} {r.Role} {r.Cable.TradeName} {r.Total.Value} {r.Path.Way} {r.Path.Bores.Value}")).Order(StringComparer.Ordinal)];

    private static string Ends(JobEstimate estimate, Engine.Wiring.Routing.Run run) =>
        string.Join(" - ", new[] { run.From < 0 ? "panel" : string.Join('+', Devices(estimate, run.From)), string.Join('+', Devices(estimate, run.To)) }.Order(StringComparer.Ordinal));

    private static IEnumerable<string> Devices(JobEstimate estimate, int box) => estimate.Wiring.Boxes[box].Equipment >= 0
        ? [estimate.Layout.Equipment[estimate.Wiring.Boxes[box].Equipment].Source.Id]
        : estimate.Wiring.Boxes[box].Devices.Select(d => estimate.Layout.Devices[d].Id).Order(StringComparer.Ordinal);
}
