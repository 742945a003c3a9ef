using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Engine.Tests.Houses;

/// <summary>No circuit takes more horizontal cable than a run from the panel to each of its boxes, by square distances worked out here.</summary>
/// <remarks>
/// Feet up and down count as feet along, so in any house a circuit may go farther along to climb less; <see cref="CableOnlyTests"/> holds the sum of both.
/// Here nothing is to be had by climbing: one level on a slab with finished walls, so that every run goes up and down once, and all boxes as high as the
/// panel. A circuit of n boxes has n runs, as its star has, so the rises cancel. The rooms are rectangles that fill one rectangle, so the way between two
/// spots is their square distance.
/// </remarks>
public sealed class HorizontalCableTests
{
    private const int Houses = 500;

    // The middle of a panel: common practice, no source.
    private static readonly Length PanelHeight = Length.FromInches(54);

    // A panel entry or a room weighs less than this beside a foot of cable at the price below.
    private static readonly Length Negligible = Length.FromInches(2);

    [Fact]
    public void Circuit_WhereRisesCancel_TakesNoMoreThanItsStar()
    {
        var (compared, shorter) = (0, 0);
        Parallel.ForEach(Enumerable.Range(0, Houses).Where(n => FillsARectangle(HouseGen.Number(n))), n =>
        {
            var estimate = SmallJobs.Estimate(Flat(HouseGen.Number(n)));
            foreach (var circuit in estimate.Wiring.Circuits)
            {
                var runs = circuit.Runs.Select(r => estimate.Wiring.Runs[r]).ToList();
                Assert.All(runs, r => Assert.Equal((RunWay.Overhead, runs[0].Path.Vertical.Value), (r.Path.Way, r.Path.Vertical.Value)));
                var spots = circuit.Boxes.Select(b => estimate.Wiring.Boxes[b].Place.Spot).ToList();
                var star = spots.Sum(s => Square(estimate.Layout.Panels[circuit.Panel].Place.Spot, s));
                var measured = runs.Sum(r => (long)r.Path.Horizontal.AsLength().Value.ToSixteenths());
                Assert.True(measured <= star + Negligible.ToSixteenths(), $"house {n}, {circuit.Id}: {measured} and {star} sixteenths");
                Interlocked.Increment(ref compared);
                Interlocked.Add(ref shorter, measured < star ? 1 : 0);
            }
        });
        Assert.True(compared > 100 && shorter > compared / 2, $"{compared} circuits were compared, {shorter} were shorter than their star");
    }

    private static long Square(PlanPoint a, PlanPoint b) => Math.Abs((long)a.X - b.X) + Math.Abs((long)a.Y - b.Y);

    private static bool FillsARectangle(Job job) => job.Levels.Length == 1 && job.Buildings.IsEmpty
        && job.Levels[0].Rooms.All(r => r.Kind is not (RoomKind.Void or RoomKind.Outdoors or RoomKind.Closet) && r.Holes.IsEmpty && r.Corners.Length is 0 or 4);

    private static Job Flat(Job drawn) => drawn with
    {
        Levels = [drawn.Levels[0] with
        {
            Framing = drawn.Levels[0].Framing with { Under = UnderFloor.Slab },
            Rooms = [.. drawn.Levels[0].Rooms.Select((r, i) => r with
            {
                Kind = RoomKind.Bedroom,
                Walls = WallState.Finished,
                CeilingHeight = null,
                Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 2 + (r.Counts.Sum(c => c.Count) + i) % 5 }],
                Placed = [],
            })],
        }],
        Controls = [],
        Equipment = [],
        Practice = new Practice { ReceptacleHeight = PanelHeight, BoxTail = Length.Zero, PanelTail = Length.Zero, BranchVoltageDropPercent = Percent.FromHundredths(1000) },
        PlanningCosts = new PlanningCosts { CablePerFoot = Money.FromDollars(5000), Bore = Money.Zero, Hour = Money.Zero },
    };
}
