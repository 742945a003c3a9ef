using System.Collections.Immutable;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Framing;

/// <summary>The walls of a level as a cable goes through them at box height: along the sides of rooms through bored studs, through a shared wall to the next room, never across an opening.</summary>
/// <remarks>
/// Lengths are packed with the corners passed, so that of two equal ways the one with fewer corner studs is taken. A corner is counted where the way
/// comes to it: from a spot on one of its walls, or from another corner or crossing.
/// </remarks>
internal sealed class WallGraph
{
    private const int PackBits = 16;

    private readonly FramedHouse _house;
    private readonly Dictionary<(int Room, int Side), ImmutableArray<WallPiece>> _pieces = [];
    private readonly Dictionary<(int Room, int Side), ImmutableArray<Facing>> _facing = [];
    private readonly List<List<(int To, long Cost)>> _links = [];
    private readonly List<WallTurn> _turns = [];
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
        var packed = Best(a, b).Cost;
        (length, corners) = packed == long.MaxValue ? (0, 0) : ((int)(packed >> PackBits), (int)(packed & ((1 << PackBits) - 1)));
        return packed != long.MaxValue;
    }

    /// <summary>The spots at which the way turns or goes through a wall, both ends included.</summary>
    internal ImmutableArray<WallTurn> Way(Placement a, Placement b)
    {
        var (_, last, start, goal) = Best(a, b);
        var (map, first) = (ReachOf(a), -1);
        var turns = new List<WallTurn> { Turn(b), Turn(goal) };
        for (var node = last; node >= 0; node = map.Before[node])
        {
            turns.Add(_turns[node]);
            first = node;
        }

        turns.Add(first < 0 ? Turn(start) : Turn(Entries(a).First(e => Away(e).Contains((first, map.Distance[first])))));
        turns.Add(Turn(a));
        turns.Reverse();
        return [.. turns.Where((t, i) => i == 0 || t.Spot != turns[i - 1].Spot)];
    }

    private Found Best(Placement a, Placement b)
    {
        var best = new Found(long.MaxValue, -1, default, default);
        if (!_pieces.ContainsKey((a.Room, a.Side)) || !_pieces.ContainsKey((b.Room, b.Side)))
        {
            return best;
        }

        var (map, goals) = (ReachOf(a), Entries(b));
        foreach (var goal in goals)
        {
            foreach (var start in Entries(a).Where(s => s.Room == goal.Room && s.Side == goal.Side && PieceAt(s) is { } p && p == PieceAt(goal)))
            {
                var way = start.Extra + goal.Extra + Pack(Math.Abs(start.Offset - goal.Offset));
                best = way < best.Cost ? new Found(way, -1, start, goal) : best;
            }
        }

        foreach (var goal in goals)
        {
            foreach (var (node, away) in NodesOf(goal))
            {
                if (map.Distance[node] < long.MaxValue && map.Distance[node] + away + goal.Extra is var way && way < best.Cost)
                {
                    best = new Found(way, node, default, goal);
                }
            }
        }

        return best;
    }

    private ReachMap ReachOf(Placement place)
    {
        var key = (place.Room, place.Side, place.Offset);
        if (!_reach.TryGetValue(key, out var map))
        {
            map = Reach(Entries(place).SelectMany(Away));
            _reach.Add(key, map);
        }

        return map;
    }

    private ReachMap Reach(IEnumerable<(int Node, long Cost)> starts)
    {
        var distance = Enumerable.Repeat(long.MaxValue, _turns.Count).ToArray();
        var before = Enumerable.Repeat(-1, _turns.Count).ToArray();
        var queue = new PriorityQueue<int, (long, int)>();
        foreach (var (node, cost) in starts)
        {
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

    private WallPiece? PieceAt(Entry spot) => _pieces[(spot.Room, spot.Side)].FirstOrDefault(p => p.From <= spot.Offset && spot.Offset <= p.To);

    private IEnumerable<(int Node, long Away)> NodesOf(Entry spot) =>
        PieceAt(spot) is { } piece ? piece.Nodes.Select(n => (n.Node, Pack(Math.Abs(n.Offset - spot.Offset)))) : [];

    private IEnumerable<(int Node, long Cost)> Away(Entry start) => NodesOf(start).Select(n => (n.Node, n.Away + start.Extra + Corners(n.Node)));

    private static WallTurn Turn(Placement place) => new(place.Spot, place.Room, place.Side, place.Offset);

    private WallTurn Turn(Entry entry) => new(WallSpots.PointAt(_house.Rooms[entry.Room], entry.Side, entry.Offset), entry.Room, entry.Side, entry.Offset);

    private void Cut(int room, bool aboveSills)
    {
        var corners = _house.Rooms[room].Corners;
        var low = WiringSettings.LowRunHeight.Inches().ToSixteenths();
        var first = _turns.Count;
        for (var c = 0; c < corners.Length; c++)
        {
            AddNode(new WallTurn(corners[c], room, c, 0), isCorner: true);
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

        var node = AddNode(Turn(new Entry(room, side, offset, 0)), isCorner: false);
        foreach (var (known, at) in piece.Nodes)
        {
            Link(known, node, Pack(Math.Abs(at - offset)));
        }

        piece.Nodes.Add((node, offset));
        return node;
    }

    private int AddNode(WallTurn turn, bool isCorner)
    {
        _turns.Add(turn);
        _links.Add([]);
        _isCorner.Add(isCorner);
        return _turns.Count - 1;
    }

    private void Link(int a, int b, long cost)
    {
        _links[a].Add((b, cost + Corners(b)));
        _links[b].Add((a, cost + Corners(a)));
    }

    private long Corners(int node) => _isCorner[node] ? 1 : 0;

    private static long Pack(int length) => (long)length << PackBits;

    /// <summary>A spot from which a wall is entered, with what it takes to get there.</summary>
    private readonly record struct Entry(int Room, int Side, int Offset, long Extra);

    /// <summary>A way by its last node; where it passes none, by the two entries of one piece of wall.</summary>
    private readonly record struct Found(long Cost, int Last, Entry Start, Entry Goal);

    private sealed record ReachMap(ImmutableArray<long> Distance, ImmutableArray<int> Before);

    private sealed class WallPiece(int from, int to)
    {
        internal int From { get; } = from;

        internal int To { get; } = to;

        internal List<(int Node, int Offset)> Nodes { get; } = [];
    }
}
