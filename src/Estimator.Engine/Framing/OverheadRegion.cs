using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Framing;

/// <summary>The joists over the rooms of a level, through which a cable may go anywhere square to the house.</summary>
/// <remarks>
/// The level is cut into cells along every corner of its rooms. A cell is part of the region where a room lies, or a wall between two rooms.
/// Two points see each other when a staircase of cells that never turns back joins them: then they lie their square distance apart. Any other
/// way turns at inner corners of the region, so the shortest way is found over those.
/// Lengths are packed with the part that runs across the joists, so that of two equal ways the one with fewer bores is taken. Outside the region the
/// joists are taken to go on.
/// </remarks>
internal sealed class OverheadRegion
{
    /// <summary>Packs a length and its part across the joists into one number that adds and compares as one.</summary>
    private const int PackBits = 22;

    private readonly bool _joistsAlongX;
    private readonly CellGrid _grid;
    private readonly ImmutableArray<(int I, int J)> _corners;
    private readonly long[,] _between;
    private readonly int[,] _nextCorner;
    private readonly Dictionary<PlanPoint, Anchor> _anchors = [];

    internal OverheadRegion(FramedHouse house, FramedLevel level, bool joistsAlongX)
    {
        _joistsAlongX = joistsAlongX;
        _grid = new CellGrid(house, level);
        _corners = [.. _grid.InnerCorners()];
        (_between, _nextCorner) = AllPairs();
    }

    /// <summary>The way between two points; where the region does not join them false, and then the square way straight across.</summary>
    internal bool TryDistance(PlanPoint a, PlanPoint b, out int length, out int across)
    {
        var packed = Packed(AnchorOf(a), AnchorOf(b), out _, out _);
        var joined = packed != long.MaxValue;
        (length, across) = Unpacked(joined ? packed : Pack(a, b));
        return joined;
    }

    /// <summary>The square way straight across, whatever lies between.</summary>
    internal (int Length, int Across) Straight(PlanPoint a, PlanPoint b) => Unpacked(Pack(a, b));

    /// <summary>The points at which the way between two points turns, both ends included.</summary>
    internal ImmutableArray<PlanPoint> Way(PlanPoint a, PlanPoint b)
    {
        var (from, to) = (AnchorOf(a), AnchorOf(b));
        if (Packed(from, to, out var first, out var last) == long.MaxValue)
        {
            return [a, b];
        }

        var stops = new List<(PlanPoint Point, ImmutableArray<int> Cells)> { (from.Point, from.Cells) };
        for (var c = first; c >= 0; c = c == last ? -1 : _nextCorner[c, last])
        {
            var (i, j) = _corners[c];
            stops.Add((_grid.Vertex(i, j), _grid.CellsAtVertex(i, j)));
        }

        stops.Add((to.Point, to.Cells));
        var turns = new List<PlanPoint> { a };
        for (var s = 0; s < stops.Count; s++)
        {
            turns.AddRange(s == 0 ? [stops[0].Point] : _grid.Staircase(stops[s - 1].Point, stops[s - 1].Cells, stops[s].Point, stops[s].Cells));
        }

        turns.Add(b);
        return Straightened(turns);
    }

    private long Packed(Anchor a, Anchor b, out int first, out int last)
    {
        (first, last) = (-1, -1);
        var outside = a.Outside + b.Outside;
        if (_grid.See(a.Cells, b.Cells))
        {
            return outside + Pack(a.Point, b.Point);
        }

        var best = long.MaxValue;
        foreach (var c in b.Corners)
        {
            if (a.ToCorner[c].Length < long.MaxValue && a.ToCorner[c].Length + Pack(CornerPoint(c), b.Point) is var way && way < best)
            {
                (best, first, last) = (way, a.ToCorner[c].First, c);
            }
        }

        return best == long.MaxValue ? best : best + outside;
    }

    private Anchor AnchorOf(PlanPoint point)
    {
        if (!_anchors.TryGetValue(point, out var anchor))
        {
            var (nearest, cells) = _grid.Attach(point);
            ImmutableArray<int> seen = [.. Enumerable.Range(0, _corners.Length).Where(c => _grid.See(cells, _grid.CellsAtVertex(_corners[c].I, _corners[c].J)))];
            anchor = new Anchor(nearest, Pack(point, nearest), cells, seen, ToCorners(nearest, seen));
            _anchors.Add(point, anchor);
        }

        return anchor;
    }

    private ImmutableArray<(long Length, int First)> ToCorners(PlanPoint point, ImmutableArray<int> seen)
    {
        var ways = ImmutableArray.CreateBuilder<(long, int)>(_corners.Length);
        for (var c = 0; c < _corners.Length; c++)
        {
            var best = (Length: long.MaxValue, First: -1);
            foreach (var s in seen)
            {
                if (_between[s, c] < long.MaxValue && Pack(point, CornerPoint(s)) + _between[s, c] is var way && way < best.Length)
                {
                    best = (way, s);
                }
            }

            ways.Add(best);
        }

        return ways.MoveToImmutable();
    }

    private (long[,] Between, int[,] Next) AllPairs()
    {
        var n = _corners.Length;
        var (between, next) = (new long[n, n], new int[n, n]);
        for (var a = 0; a < n; a++)
        {
            var cells = _grid.CellsAtVertex(_corners[a].I, _corners[a].J);
            for (var b = 0; b < n; b++)
            {
                var seen = _grid.See(cells, _grid.CellsAtVertex(_corners[b].I, _corners[b].J));
                (between[a, b], next[a, b]) = (seen ? Pack(CornerPoint(a), CornerPoint(b)) : long.MaxValue, b);
            }
        }

        for (var via = 0; via < n; via++)
        {
            for (var a = 0; a < n; a++)
            {
                for (var b = 0; b < n && between[a, via] < long.MaxValue; b++)
                {
                    if (between[via, b] < long.MaxValue && between[a, via] + between[via, b] < between[a, b])
                    {
                        (between[a, b], next[a, b]) = (between[a, via] + between[via, b], next[a, via]);
                    }
                }
            }
        }

        return (between, next);
    }

    private PlanPoint CornerPoint(int corner) => _grid.Vertex(_corners[corner].I, _corners[corner].J);

    private long Pack(PlanPoint a, PlanPoint b) =>
        ((long)a.SquareDistanceTo(b) << PackBits) + Math.Abs(_joistsAlongX ? a.Y - b.Y : a.X - b.X);

    private static (int Length, int Across) Unpacked(long packed) => ((int)(packed >> PackBits), (int)(packed & ((1L << PackBits) - 1)));

    private static ImmutableArray<PlanPoint> Straightened(List<PlanPoint> points)
    {
        var turns = ImmutableArray.CreateBuilder<PlanPoint>();
        foreach (var p in points)
        {
            if (turns.Count > 0 && turns[^1] == p)
            {
                continue;
            }

            // A spot outside the region may be reached over the same line on which the way came there: going there and back stays.
            if (turns.Count > 1 && turns[^2].SquareDistanceTo(turns[^1]) + turns[^1].SquareDistanceTo(p) == turns[^2].SquareDistanceTo(p)
                && ((turns[^1].X == p.X && turns[^2].X == p.X) || (turns[^1].Y == p.Y && turns[^2].Y == p.Y)))
            {
                turns.RemoveAt(turns.Count - 1);
            }

            turns.Add(p);
        }

        return turns.ToImmutable();
    }

    private sealed record Anchor(
        PlanPoint Point, long Outside, ImmutableArray<int> Cells, ImmutableArray<int> Corners, ImmutableArray<(long Length, int First)> ToCorner);
}
