using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Wiring.Circuits;
using Estimator.Engine.Wiring.Routing;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Engine.Tests.Houses;

/// <summary>Where cable is all that counts, no circuit takes more of it than a run from the panel to each of its boxes.</summary>
/// <remarks>
/// With the usual planning costs a second cable into the panel costs more than some feet of cable, so a circuit may then be longer than its star and
/// cheaper; <see cref="WiringInvariants"/> holds that sum. Here a foot is dear and tails are none, so feet decide.
/// </remarks>
public sealed class CableOnlyTests
{
    private const int Houses = 400;

    // A panel entry, a room or a bore weighs less than this beside a foot of cable at the price below.
    private static readonly Length Negligible = Length.FromInches(2);

    [Fact]
    public void Circuit_WithoutForcedOrder_IsNoLongerThanItsStar()
    {
        var compared = 0;
        Parallel.For(0, Houses, n =>
        {
            var drawn = HouseGen.Number(n);
            var estimate = SmallJobs.Estimate(drawn with
            {
                Practice = drawn.Practice with { BoxTail = Length.Zero, PanelTail = Length.Zero, BranchVoltageDropPercent = Percent.FromHundredths(1000) },
                PlanningCosts = new PlanningCosts { CablePerFoot = Money.FromDollars(5000), Bore = Money.Zero, Hour = Money.Zero },
            });
            var map = new FramingMap(estimate.House);
            foreach (var circuit in estimate.Wiring.Circuits.Where(c => Free(estimate, c)))
            {
                var measured = circuit.Runs.Select(r => estimate.Wiring.Runs[r].Path).Sum(p => p.Horizontal.Value + p.Vertical.Value);
                var panel = estimate.Layout.Panels[circuit.Panel].Place;
                var star = circuit.Boxes.Sum(b => Length.FromSixteenths(Shortest(map, panel, estimate.Wiring.Boxes[b].Place)).ToNanometres());
                Assert.True(measured <= star + Negligible.ToNanometres(), $"house {n}, {circuit.Id}: {measured} and {star} nm");
                Interlocked.Increment(ref compared);
            }
        });
        Assert.True(compared > Houses / 2, $"only {compared} circuits were compared");
    }

    private static bool Free(JobEstimate estimate, Circuit circuit) => !circuit.FirstReceptacleProtects
        && circuit.Runs.All(r => estimate.Wiring.Runs[r].Role is RunRole.HomeRun or RunRole.Feed)
        && circuit.Boxes.Select(b => estimate.Wiring.Boxes[b]).All(b => b.Gangs == 1 && b.Equipment < 0);

    private static int Shortest(FramingMap map, Placement panel, Placement box)
    {
        RunWay[] ways = [RunWay.AlongWalls, RunWay.Overhead, RunWay.Underfloor];
        return ways.Select(w => map.TryWay(panel, box, w, out var length) ? length.Horizontal + length.Vertical : int.MaxValue).Min();
    }
}
