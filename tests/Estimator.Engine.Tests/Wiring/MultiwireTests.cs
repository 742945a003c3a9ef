using System.Collections.Concurrent;
using Estimator.Engine.Checks;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Panels;
using Estimator.Engine.Tests.Houses;
using Estimator.Engine.Tests.Wiring.Simulation;
using Estimator.Engine.Wiring.Routing;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Engine.Tests.Wiring;

/// <summary>Multiwire branch circuits by NEC 210.4 and 300.13(B): one two-pole breaker, one home run of three conductors, the neutral spliced ahead of every device.</summary>
public sealed class MultiwireTests
{
    private const int Houses = 200;

    [Fact]
    public void Kitchen_OnRequest_TakesOneHomeRunForTwoCircuits()
    {
        var (apart, together) = (SmallJobs.Estimate(Kitchen(null)), SmallJobs.Estimate(Kitchen(MultiwireUse.SmallAppliance)));
        Assert.All(apart.Wiring.Circuits, c => Assert.Null(c.SharesNeutralWith));

        var pair = together.Wiring.Circuits.Where(c => c.SharesNeutralWith is not null).ToList();
        Assert.Equal(2, pair.Count);
        Assert.All(pair, c => Assert.Equal(CircuitKind.SmallAppliance, c.Kind));
        var homeRun = Assert.Single(pair.SelectMany(c => c.Runs).Select(r => together.Wiring.Runs[r]), r => r.Role is RunRole.HomeRun);
        Assert.Equal(3, homeRun.Cable.Conductors);
        Assert.True(together.Wiring.PlanningCostE4 < apart.Wiring.PlanningCostE4);
        Assert.Equal((0m, 1m), (Breakers(together, "breaker-1-20"), Breakers(together, "breaker-2-20")));
        Assert.Contains(HeldRules.Of(together.AppliedRules, together.Findings), r => r.Key == "multiwire");
        Assert.DoesNotContain(together.Findings, f => f.Code is "required-circuits" or "counter-circuits");
    }

    [Fact]
    public void Breaker_OfAPair_TakesASpaceOfEachLeg()
    {
        var estimate = SmallJobs.Estimate(Kitchen(MultiwireUse.SmallAppliance));
        var placed = Assert.Single(estimate.Schedules["P1"].Breakers, b => b.Breaker.Origin is BreakerOrigin.Circuit && b.Breaker.Poles == 2);
        Assert.Equal((2, PanelLeg.Both), (placed.Spaces.Length, placed.Leg));
        // 1500 VA for each small-appliance circuit, NEC 220.52(A).
        Assert.Equal(3000m, placed.Breaker.LoadVa.Value);
    }

    [Fact]
    public void Trace_OfMultiwireCircuits_LightsWhatItShould()
    {
        var (problems, pairs) = (new ConcurrentQueue<string>(), 0);
        Parallel.For(0, Houses, n =>
        {
            var job = n % 2 == 0 ? ControlHouses.Number(n, 10) : HouseGen.Number(n);
            // Breakers at next to nothing, so that two poles are no dearer than twice one.
            var estimate = SmallJobs.Estimate(job with { Practice = job.Practice with { Multiwire = MultiwireUse.Every }, PlanningCosts = job.PlanningCosts with { Breaker = Money.FromDollars(0.01m) } });
            foreach (var circuit in estimate.Wiring.Circuits.Where(c => c is { SharesNeutralWith: not null, LeavesCommonHomeRun: false }))
            {
                Interlocked.Increment(ref pairs);
                foreach (var problem in new CircuitTester(estimate, circuit).Problems())
                {
                    problems.Enqueue($"house {n}: {problem}");
                }
            }

            foreach (var problem in WiringInvariants.Problems(estimate).Concat(SumCheck.Problems(estimate)).Concat(n % 2 == 0 ? [] : ExplanationCheck.Problems(estimate.Book)))
            {
                problems.Enqueue($"house {n}: {problem}");
            }
        });
        Assert.True(problems.IsEmpty, $"{problems.Count}\n{string.Join('\n', problems.Take(20))}");
        Assert.True(pairs > Houses / 5, $"{pairs} pairs");
    }

    [Fact]
    public void Trace_WithTheTwoHotsExchanged_IsFoundWrong()
    {
        var estimate = SmallJobs.Estimate(Kitchen(MultiwireUse.SmallAppliance));
        var circuit = estimate.Wiring.Circuits.First(c => c is { SharesNeutralWith: not null, LeavesCommonHomeRun: false });
        var box = estimate.Wiring.Boxes[circuit.Boxes[0]];
        var hots = box.Joints.Where(j => j.Function is Engine.Wiring.Joints.ConductorFunction.Hot).ToList();
        Assert.Equal(2, hots.Count);
        Engine.Wiring.Joints.Joint[] wrong = [.. box.Joints.Select(j => j == hots[0] ? j with { Ends = hots[1].Ends } : j == hots[1] ? j with { Ends = hots[0].Ends } : j)];
        Assert.NotEmpty(new CircuitTester(estimate, circuit, b => b == box ? wrong : b.Joints).Problems());
    }

    private static decimal Breakers(JobEstimate estimate, string item) => estimate.Takeoff.Lines.Where(l => l.ItemId.StartsWith(item, StringComparison.Ordinal)).Sum(l => l.Quantity.Value);

    // The panel hangs 60 ft off in a garage, so that a home run counts.
    private static Job Kitchen(MultiwireUse? use)
    {
        var job = SmallJobs.OneRoom(RoomKind.Kitchen, (DeviceKind.DuplexReceptacle, 4)).With(r => r with
        {
            Counts = [.. r.Counts, new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Serves = ServedPlace.Counter, Count = 4 }],
        });
        var garage = new Room { Id = "G", Kind = RoomKind.Garage, Size = new RectangleSize(Length.FromFeet(60), Length.FromFeet(12)), At = new GridPoint(Length.FromFeet(16.5m), Length.Zero) };
        return job with
        {
            Levels = [job.Levels[0] with { Rooms = [.. job.Levels[0].Rooms, garage] }],
            Panels = [job.Panels[0] with { Room = "G", Wall = new WallSpot(2, Length.FromFeet(6)), Existing = false }],
            Practice = new Practice { Multiwire = use },
        };
    }
}
