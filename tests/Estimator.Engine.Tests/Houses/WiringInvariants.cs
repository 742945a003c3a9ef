using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Panels;
using Estimator.Engine.Wiring.Circuits;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Tests.Houses;

/// <summary>What holds for the wiring of every house, checked by code of its own.</summary>
internal static class WiringInvariants
{
    private const int Thickest = 250;

    internal static IEnumerable<string> Problems(JobEstimate estimate)
    {
        var map = new FramingMap(estimate.House);
        return OnOneCircuit(estimate)
            .Concat(estimate.Wiring.Circuits.SelectMany(c => Tree(estimate, c).Concat(Lengths(estimate, c, map)).Concat(Full(estimate, c))))
            .Concat(estimate.Wiring.Runs.SelectMany(r => Path(estimate, r).Concat(AsChosen(estimate, r, map))));
    }

    private static IEnumerable<string> OnOneCircuit(JobEstimate estimate)
    {
        var devices = estimate.Wiring.Boxes.SelectMany(b => b.Devices).Order().ToList();
        if (!devices.SequenceEqual(Enumerable.Range(0, estimate.Layout.Devices.Length)))
        {
            yield return "devices are not each in one box";
        }

        var equipment = estimate.Wiring.Boxes.Where(b => b.Equipment >= 0).Select(b => b.Equipment).Order().ToList();
        if (!equipment.SequenceEqual(Enumerable.Range(0, estimate.Layout.Equipment.Length)))
        {
            yield return "equipment is not each in one box";
        }

        var boxes = estimate.Wiring.Circuits.SelectMany(c => c.Boxes).Order().ToList();
        if (!boxes.SequenceEqual(Enumerable.Range(0, estimate.Wiring.Boxes.Length)))
        {
            yield return "boxes are not each on one circuit";
        }
    }

    // The panel; of a circuit that leaves a common home run, the box where it does.
    private static int RootOf(JobEstimate estimate, Circuit circuit) => circuit.LeavesCommonHomeRun ? estimate.Wiring.Circuits[circuit.SharesNeutralWith!.Value].Boxes[0] : -1;

    private static IEnumerable<string> Tree(JobEstimate estimate, Circuit circuit)
    {
        var edges = Edges(estimate, circuit).Keys.ToList();
        var reached = new HashSet<int> { RootOf(estimate, circuit) };
        for (var grew = true; grew;)
        {
            grew = edges.Any(e => (reached.Contains(e.A) && reached.Add(e.B)) || (reached.Contains(e.B) && reached.Add(e.A)));
        }

        if (edges.Count != circuit.Boxes.Length || circuit.Boxes.Any(b => !reached.Contains(b)))
        {
            yield return $"{circuit.Id}: {edges.Count} edges over {circuit.Boxes.Length} boxes are no tree from the panel";
        }
    }

    // A spanning tree by square distance is the least that any wiring of these boxes can measure; a run from the panel to each box the most that it
    // may cost where nothing forces an order.
    private static IEnumerable<string> Lengths(JobEstimate estimate, Circuit circuit, FramingMap map)
    {
        var edges = Edges(estimate, circuit);
        var horizontal = edges.Values.Sum(runs => runs.Min(r => Sixteenths(r.Path.Horizontal.Value)));
        var spots = circuit.Boxes.Select(b => estimate.Wiring.Boxes[b].Place.Spot).Prepend(RootOf(estimate, circuit) is >= 0 and var root ? estimate.Wiring.Boxes[root].Place.Spot : estimate.Layout.Panels[circuit.Panel].Place.Spot).ToList();
        if (SpanningLength(spots) > horizontal)
        {
            yield return $"{circuit.Id}: horizontal cable {horizontal} is less than a spanning tree {SpanningLength(spots)}";
        }

        var free = circuit.SharesNeutralWith is null && circuit.Kind is not CircuitKind.Lighting && !circuit.FirstReceptacleProtects && circuit.Boxes.All(b => estimate.Wiring.Boxes[b].Gangs == 1 && edges.Values.All(r => r.Count == 1 && r[0].Role is RunRole.HomeRun or RunRole.Feed));
        if (free)
        {
            var (tree, star) = TreeAndStar(estimate, circuit, map, edges.Values.Select(r => r[0]));
            if (tree > star)
            {
                yield return $"{circuit.Id}: its runs cost {tree}, more than running each box from the panel, {star}";
            }
        }
    }

    private static IEnumerable<string> Full(JobEstimate estimate, Circuit circuit)
    {
        var singles = circuit.Runs.All(r => estimate.Wiring.Runs[r].Role is RunRole.HomeRun or RunRole.Feed) && circuit.Kind is not CircuitKind.Lighting;
        if (singles && circuit.Outlets > 10)
        {
            yield return $"{circuit.Id}: {circuit.Outlets} outlets and nothing forces them together";
        }

        foreach (var box in circuit.Boxes.Select(b => estimate.Wiring.Boxes[b]).Where(b => !b.Fits))
        {
            if (!estimate.Findings.Any(f => f.Code == "box-fill" && f.Where.Contains(box.Id)))
            {
                yield return $"{box.Id}: overfilled and not found";
            }
        }
    }

    private static IEnumerable<string> Path(JobEstimate estimate, Run run)
    {
        var house = estimate.House;
        var ends = new[] { run.From < 0 ? estimate.Layout.Panels[estimate.Wiring.Circuits[run.Circuit].Panel].Place : estimate.Wiring.Boxes[run.From].Place, estimate.Wiring.Boxes[run.To].Place };
        if (run.Path.Bridged || ends.Any(e => house.Rooms[e.Room].Source.Kind is RoomKind.Outdoors))
        {
            yield break;
        }

        for (var i = 1; i < run.Path.Turns.Length; i++)
        {
            var (a, b) = (run.Path.Turns[i - 1], run.Path.Turns[i]);
            var middle = new PlanPoint((a.Spot.X + b.Spot.X) / 2, (a.Spot.Y + b.Spot.Y) / 2);
            // The joists between two levels carry the rooms of both.
            var rooms = house.Levels.Where(l => Math.Abs(l.Index - b.Level) <= 1).SelectMany(l => l.Rooms).Select(r => house.Rooms[r]).ToList();
            // Through a trench a run goes from below grade to below grade.
            var buried = run.Path.Way is RunWay.Underground && a.Height < 0 && b.Height < 0;
            if (!buried && !rooms.Any(r => Near(r, middle)))
            {
                yield return $"{run.Id}: leaves the building at {middle}";
            }

            if (run.Path.Way is RunWay.AlongWalls && Crossed(estimate, ends, a, b) is { } opening)
            {
                yield return $"{run.Id}: crosses opening {opening}";
            }
        }
    }

    // What a run was chosen by is what its explanation adds up, to the sixteenth and to the hole.
    private static IEnumerable<string> AsChosen(JobEstimate estimate, Run run, FramingMap map)
    {
        var from = run.From < 0 ? estimate.Layout.Panels[estimate.Wiring.Circuits[run.Circuit].Panel].Place : estimate.Wiring.Boxes[run.From].Place;
        var explained = (Sixteenths(run.Path.Horizontal.Value), Sixteenths(run.Path.Vertical.Value), run.Path.Bores.Value);
        if (!map.TryWay(from, estimate.Wiring.Boxes[run.To].Place, run.Path.Way, out var chosen) || explained != (chosen.Horizontal, chosen.Vertical, chosen.Bores))
        {
            yield return $"{run.Id}: chosen {run.Path.Way} by {chosen}, explained as {explained}";
        }
    }

    private static string? Crossed(JobEstimate estimate, Placement[] ends, Waypoint a, Waypoint b)
    {
        var house = estimate.House;
        // An opening that was drawn off its rooms' walls is found and said; only those on both walls say where they are broken.
        foreach (var opening in house.Openings.Where(o => !estimate.Findings.Any(f => f.Code == "opening-off-wall" && f.Where.Contains(o.Source.Id)))
            .Where(o => o.BreaksFloorLine && house.Rooms[o.Room].Level == a.Level && o.To > o.From)
            .Where(o => house.Openings.Where(x => ReferenceEquals(x.Source, o.Source)).All(x => x.To - x.From == o.Source.Width.ToSixteenths())))
        {
            var room = house.Rooms[opening.Room];
            var (from, to) = (WallSpots.PointAt(room, opening.Side, opening.From), WallSpots.PointAt(room, opening.Side, opening.To));
            var level = from.Y == to.Y && a.Spot.Y == from.Y && b.Spot.Y == from.Y && Overlap(a.Spot.X, b.Spot.X, from.X, to.X);
            var upright = from.X == to.X && a.Spot.X == from.X && b.Spot.X == from.X && Overlap(a.Spot.Y, b.Spot.Y, from.Y, to.Y);
            // A box that the user put into a doorway has nowhere else to start from.
            if ((level || upright) && !ends.Any(e => Within(e, from, to)))
            {
                return opening.Source.Id;
            }
        }

        return null;
    }

    private static bool Within(Placement end, PlanPoint from, PlanPoint to) =>
        Math.Min(from.X, to.X) <= end.Spot.X && end.Spot.X <= Math.Max(from.X, to.X) && Math.Min(from.Y, to.Y) <= end.Spot.Y && end.Spot.Y <= Math.Max(from.Y, to.Y);

    private static bool Overlap(int a, int b, int c, int d) => Math.Max(Math.Min(a, b), Math.Min(c, d)) < Math.Min(Math.Max(a, b), Math.Max(c, d));

    private static bool Near(FramedRoom room, PlanPoint p)
    {
        if (room.Holes.Any(h => Polygons.Holds(h, p) && WallSpotsOf(h, p) > 0))
        {
            return false;
        }

        return Polygons.Holds(room, p) || Enumerable.Range(0, room.Corners.Length).Any(s => ToSide(room.Corners[s], room.Corners[(s + 1) % room.Corners.Length], p) <= Thickest);
    }

    private static int WallSpotsOf(System.Collections.Immutable.ImmutableArray<PlanPoint> ring, PlanPoint p) =>
        Enumerable.Range(0, ring.Length).Min(s => ToSide(ring[s], ring[(s + 1) % ring.Length], p));

    private static int ToSide(PlanPoint a, PlanPoint b, PlanPoint p) =>
        Math.Max(0, Math.Max(Math.Min(a.X, b.X) - p.X, p.X - Math.Max(a.X, b.X))) + Math.Max(0, Math.Max(Math.Min(a.Y, b.Y) - p.Y, p.Y - Math.Max(a.Y, b.Y)));

    private static Dictionary<(int A, int B), List<Run>> Edges(JobEstimate estimate, Circuit circuit) => circuit.Runs.Select(r => estimate.Wiring.Runs[r])
        .GroupBy(r => (Math.Min(r.From, r.To), Math.Max(r.From, r.To))).ToDictionary(g => g.Key, g => g.ToList());

    // What the runs cost to put in, against each box with a run of its own from the panel, every entry into the panel counted.
    private static (long Tree, long Star) TreeAndStar(JobEstimate estimate, Circuit circuit, FramingMap map, IEnumerable<Run> runs)
    {
        var drafts = Engine.Wiring.Boxes.BoxForming.Form(estimate.Layout);
        var costs = new WayCosts(estimate.Layout, map, new PlanningPrices(estimate.House.Job.PlanningCosts), drafts, []);
        var index = drafts.ToDictionary(d => d.Id, d => d.Index, StringComparer.Ordinal);
        var panel = costs.PanelNode(circuit.Panel);
        int Node(int box) => box < 0 ? panel : index[estimate.Wiring.Boxes[box].Id];
        long Cost(int from, int to, CableType cable) => costs.Best(from, to, cable).CostE4 + (from == panel ? costs.Prices.PanelEntryE4 : 0);
        var cable = estimate.Wiring.Runs[circuit.Runs[0]].Cable;
        return (runs.Sum(r => Cost(Node(r.From), Node(r.To), r.Cable)), circuit.Boxes.Sum(b => Cost(panel, Node(b), cable)));
    }

    private static long SpanningLength(List<PlanPoint> spots)
    {
        var rest = spots.Skip(1).ToList();
        var tree = new List<PlanPoint> { spots[0] };
        var total = 0L;
        while (rest.Count > 0)
        {
            var next = rest.MinBy(p => tree.Min(t => t.SquareDistanceTo(p)));
            total += tree.Min(t => t.SquareDistanceTo(next));
            tree.Add(next);
            rest.Remove(next);
        }

        return total;
    }

    private static long Sixteenths(decimal nanometres) => Length.FromNanometres(decimal.ToInt64(decimal.Round(nanometres, 0, MidpointRounding.AwayFromZero))).ToSixteenths();
}
