using System.Collections.Immutable;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Framing;

/// <summary>The walls of a level as a cable goes through them at box height: along the sides of rooms through bored studs, through a shared wall to the next room, never across an opening.</summary>
/// <remarks>Lengths are packed with the corners turned, so that of two equal ways the one with fewer corner studs is taken.</remarks>
internal sealed class WallGraph
{
    private const int PackBits = 16;

    private readonly FramedHouse _house;
    private readonly Dictionary<(int Room, int Side), ImmutableArray<WallPiece>> _pieces = [];
    private readonly Dictionary<(int Room, int Side), ImmutableArray<Facing>> _facing = [];
    private readonly List<List<(int To, long Cost)>> _links = [];
    private readonly List<PlanPoint> _points = [];
    private readonly List<bool> _isCorner = [];
    private readonly Dictionary<(int Room, int Side, int Offset), ReachMap> _reach = [];

    internal WallGraph(FramedHouse house, FramedLevel level, bool aboveSills)
    {
        _house = house;
        var rooms = level.Rooms.Where(r => house.Rooms[r].Source.Walls is House.WallState.Open).ToList();
        foreach (var room in rooms)
        {
            Cut(room, aboveSills);
        }

        var thickest = (house.Job.Practice.MaximumWallThickness ?? PracticeDefaults.MaximumWallThickness.Inches()).ToSixteenths();
        foreach (var room in rooms)
        {
            for (var side = 0; side < house.Rooms[room].Corners.Length; side++)
            {
                _facing[(room, side)] = [.. rooms.Where(r => r != room).SelectMany(r => Facing.Between(house, room, side, r, thickest))];
            }
        }

        foreach (var (room, side) in _facing.Keys.Order().ToList())
        {
            Cross(room, side);
        }
    }

    /// <summary>The way between two spots on walls; false where none leads along walls.</summary>
    internal bool TryWay(Placement a, Placement b, out int length, out int corners)
    {
        var found = Best(a, b);
        (length, corners) = found is { Packed: var packed } ? ((int)(packed >> PackBits), (int)(packed & ((1 << PackBits) - 1))) : (0, 0);
        return found is not null;
    }

    /// <summary>The points at which the way turns, both ends included.</summary>
    internal ImmutableArray<PlanPoint> Way(Placement a, Placement b)
    {
        if (Best(a, b) is not { } found)
        {
            return [a.Spot, b.Spot];
        }

        var turns = new List<PlanPoint> { b.Spot, PointOf(found.Goal) };
        var map = ReachOf(a);
        var start = found.Start;
        for (var node = found.Last; node >= 0; node = map.Before[node])
        {
            turns.Add(_points[node]);
            start = map.Before[node] < 0 ? StartAt(a, node, map.Distance[node]) : start;
        }

        turns.Add(PointOf(start));
        turns.Add(a.Spot);
        turns.Reverse();
        return [.. turns.Where((p, i) => i == 0 || p != turns[i - 1])];
    }

    // Either both entries lie on one piece of wall, or the way goes from the start's nodes to the goal's.
    private (long Packed, int Last, Entry Start, Entry Goal)? Best(Placement a, Placement b)
    {
        if (!_pieces.ContainsKey((a.Room, a.Side)) || !_pieces.ContainsKey((b.Room, b.Side)))
        {
            return null;
        }

        var (map, starts, goals) = (ReachOf(a), Entries(a).ToList(), Entries(b).ToList());
        (long Packed, int Last, Entry Start, Entry Goal)? best = null;
        foreach (var goal in goals)
        {
            foreach (var start in starts.Where(s => s.Room == goal.Room && s.Side == goal.Side && PieceAt(s) is { } p && p == PieceAt(goal)))
            {
                var way = start.Extra + goal.Extra + Pack(Math.Abs(start.Offset - goal.Offset));
                best = way < (best?.Packed ?? long.MaxValue) ? (way, -1, start, goal) : best;
            }
        }

        foreach (var goal in goals)
        {
            foreach (var (node, away) in NodesOf(goal))
            {
                if (map.Distance[node] < long.MaxValue && map.Distance[node] + away + goal.Extra is var way && way < (best?.Packed ?? long.MaxValue))
                {
                    best = (way, node, starts[0], goal);
                }
            }
        }

        return best;
    }

    private Entry StartAt(Placement place, int node, long distance) =>
        Entries(place).First(e => NodesOf(e).Any(n => n.Node == node && n.Away + e.Extra + Turned(node) == distance));

    private PlanPoint PointOf(Entry entry) => WallSpots.PointAt(_house.Rooms[entry.Room], entry.Side, entry.Offset);

    private ReachMap ReachOf(Placement place)
    {
        var key = (place.Room, place.Side, place.Offset);
        if (!_reach.TryGetValue(key, out var map))
        {
            map = Reach(Entries(place).SelectMany(e => NodesOf(e).Select(n => (n.Node, n.Away + e.Extra))));
            _reach.Add(key, map);
        }

        return map;
    }

    private ReachMap Reach(IEnumerable<(int Node, long Cost)> starts)
    {
        var distance = Enumerable.Repeat(long.MaxValue, _points.Count).ToArray();
        var before = Enumerable.Repeat(-1, _points.Count).ToArray();
        var queue = new PriorityQueue<int, (long, int)>();
        foreach (var (node, away) in starts)
        {
            var cost = away + Turned(node);
            if (cost < distance[node])
            {
                distance[node] = cost;
                queue.Enqueue(node, (cost, node));
            }
        }

        while (queue.TryDequeue(out var at, out var key))
        {
            foreach (var (to, cost) in key.Item1 == distance[at] ? _links[at] : [])
            {
                if (distance[at] + cost < distance[to])
                {
                    (distance[to], before[to]) = (distance[at] + cost, at);
                    queue.Enqueue(to, (distance[to], to));
                }
            }
        }

        return new ReachMap([.. distance], [.. before]);
    }

    // A spot on a wall can be reached on its own side and, where a room faces it through the wall, straight across from there.
    private IEnumerable<Entry> Entries(Placement place)
    {
        yield return new Entry(place.Room, place.Side, place.Offset, 0);
        foreach (var facing in _facing[(place.Room, place.Side)])
        {
            if (facing.From <= place.Offset && place.Offset <= facing.To)
            {
                yield return new Entry(facing.Room, facing.Side, facing.Map(place.Offset), Pack(facing.Gap));
            }
        }
    }

    private WallPiece? PieceAt(Entry spot) =>
        _pieces[(spot.Room, spot.Side)].FirstOrDefault(p => p.From <= spot.Offset && spot.Offset <= p.To);

    private IEnumerable<(int Node, long Away)> NodesOf(Entry spot) =>
        PieceAt(spot) is { } piece ? piece.Nodes.Select(n => (n.Node, Pack(Math.Abs(n.Offset - spot.Offset)))) : [];

    private void Cut(int room, bool aboveSills)
    {
        var corners = _house.Rooms[room].Corners;
        var low = WiringSettings.LowRunHeight.Inches().ToSixteenths();
        var first = _points.Count;
        for (var c = 0; c < corners.Length; c++)
        {
            AddNode(corners[c], isCorner: true);
        }

        for (var side = 0; side < corners.Length; side++)
        {
            var length = corners[side].StraightDistanceTo(corners[(side + 1) % corners.Length]);
            var breaks = _house.Openings.Where(o => o.Room == room && o.Side == side && (o.BreaksFloorLine || aboveSills || o.Sill < low))
                .OrderBy(o => o.From).ToList();
            var pieces = ImmutableArray.CreateBuilder<WallPiece>();
            var at = 0;
            foreach (var o in breaks)
            {
                AddPiece(pieces, at, Math.Max(at, o.From), length, first + side, first + (side + 1) % corners.Length);
                at = Math.Max(at, o.To);
            }

            AddPiece(pieces, at, length, length, first + side, first + (side + 1) % corners.Length);
            _pieces[(room, side)] = pieces.ToImmutable();
        }
    }

    private void AddPiece(ImmutableArray<WallPiece>.Builder pieces, int from, int to, int length, int firstCorner, int lastCorner)
    {
        if (from > to || (from == to && from != 0 && to != length))
        {
            return;
        }

        var piece = new WallPiece(from, to);
        if (from == 0)
        {
            piece.Nodes.Add((firstCorner, 0));
        }

        if (to == length)
        {
            if (from == 0)
            {
                Link(firstCorner, lastCorner, Pack(length));
            }

            piece.Nodes.Add((lastCorner, length));
        }

        pieces.Add(piece);
    }

    // At both ends of the stretch that two sides share, a cable can go through the wall.
    private void Cross(int room, int side)
    {
        foreach (var facing in _facing[(room, side)].Where(f => (room, side).CompareTo((f.Room, f.Side)) < 0))
        {
            foreach (var offset in new[] { facing.From, facing.To }.Distinct())
            {
                var here = PieceAt(new Entry(room, side, offset, 0));
                var there = PieceAt(new Entry(facing.Room, facing.Side, facing.Map(offset), 0));
                if (here is not null && there is not null)
                {
                    Link(NodeAt(here, room, side, offset), NodeAt(there, facing.Room, facing.Side, facing.Map(offset)), Pack(facing.Gap));
                }
            }
        }
    }

    private int NodeAt(WallPiece piece, int room, int side, int offset)
    {
        foreach (var (known, at) in piece.Nodes)
        {
            if (at == offset)
            {
                return known;
            }
        }

        var node = AddNode(WallSpots.PointAt(_house.Rooms[room], side, offset), isCorner: false);
        foreach (var (known, at) in piece.Nodes)
        {
            Link(known, node, Pack(Math.Abs(at - offset)));
        }

        piece.Nodes.Add((node, offset));
        return node;
    }

    private int AddNode(PlanPoint point, bool isCorner)
    {
        _points.Add(point);
        _links.Add([]);
        _isCorner.Add(isCorner);
        return _points.Count - 1;
    }

    private void Link(int a, int b, long cost)
    {
        _links[a].Add((b, cost + Turned(b)));
        _links[b].Add((a, cost + Turned(a)));
    }

    // A corner is counted where the way comes to it.
    private int Turned(int node) => _isCorner[node] ? 1 : 0;

    private static long Pack(int length) => (long)length << PackBits;

    private readonly record struct Entry(int Room, int Side, int Offset, long Extra);

    private sealed record ReachMap(ImmutableArray<long> Distance, ImmutableArray<int> Before);

    private sealed class WallPiece(int from, int to)
    {
        internal int From { get; } = from;

        internal int To { get; } = to;

        internal List<(int Node, int Offset)> Nodes { get; } = [];
    }
}
