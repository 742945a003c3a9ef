using System.Collections;
using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Framing;

/// <summary>A level cut into cells along every corner of its rooms, and which cells a cable may cross.</summary>
internal sealed class CellGrid
{
    private readonly ImmutableArray<int> _xs;
    private readonly ImmutableArray<int> _ys;
    private readonly bool[,] _inside;
    private readonly Dictionary<int, BitArray> _seen = [];

    internal CellGrid(FramedHouse house, FramedLevel level)
    {
        var rooms = level.Rooms.Select(r => house.Rooms[r]).ToList();
        var points = rooms.SelectMany(r => r.Corners).Concat(rooms.SelectMany(r => r.Holes).SelectMany(h => h)).ToList();
        _xs = [.. points.Select(p => p.X).Distinct().Order()];
        _ys = [.. points.Select(p => p.Y).Distinct().Order()];
        _inside = new bool[Columns, Rows];
        var thickest = (house.Job.Practice.MaximumWallThickness ?? PracticeDefaults.MaximumWallThickness.Inches()).ToSixteenths();
        Mark(rooms, thickest);
    }

    private int Columns => Math.Max(0, _xs.Length - 1);

    private int Rows => Math.Max(0, _ys.Length - 1);

    internal PlanPoint Vertex(int i, int j) => new(_xs[i], _ys[j]);

    internal IEnumerable<(int I, int J)> InnerCorners()
    {
        for (var i = 1; i < Columns; i++)
        {
            for (var j = 1; j < Rows; j++)
            {
                var (sw, se, nw, ne) = (_inside[i - 1, j - 1], _inside[i, j - 1], _inside[i - 1, j], _inside[i, j]);
                var count = (sw ? 1 : 0) + (se ? 1 : 0) + (nw ? 1 : 0) + (ne ? 1 : 0);
                if (count == 3 || (count == 2 && sw == ne))
                {
                    yield return (i, j);
                }
            }
        }
    }

    internal ImmutableArray<int> CellsAtVertex(int i, int j)
    {
        var cells = ImmutableArray.CreateBuilder<int>(4);
        for (var ci = Math.Max(0, i - 1); ci <= i && ci < Columns; ci++)
        {
            for (var cj = Math.Max(0, j - 1); cj <= j && cj < Rows; cj++)
            {
                if (_inside[ci, cj])
                {
                    cells.Add(Cell(ci, cj));
                }
            }
        }

        return cells.ToImmutable();
    }

    /// <summary>The point itself and its cells where it lies in the region; else the nearest point of the region.</summary>
    internal (PlanPoint Point, ImmutableArray<int> Cells) Attach(PlanPoint point)
    {
        var best = (Distance: int.MaxValue, Point: point);
        for (var i = 0; i < Columns; i++)
        {
            for (var j = 0; j < Rows; j++)
            {
                if (_inside[i, j])
                {
                    var near = new PlanPoint(Math.Clamp(point.X, _xs[i], _xs[i + 1]), Math.Clamp(point.Y, _ys[j], _ys[j + 1]));
                    best = near.SquareDistanceTo(point) < best.Distance ? (near.SquareDistanceTo(point), near) : best;
                }
            }
        }

        return (best.Point, CellsAt(best.Point));
    }

    internal bool See(ImmutableArray<int> a, ImmutableArray<int> b)
    {
        foreach (var from in a)
        {
            var seen = SeenFrom(from);
            foreach (var to in b)
            {
                if (seen[to])
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>The turns of a staircase from one point to another that it sees.</summary>
    internal IEnumerable<PlanPoint> Staircase(PlanPoint a, ImmutableArray<int> cellsA, PlanPoint b, ImmutableArray<int> cellsB)
    {
        var from = cellsA.First(c => cellsB.Any(t => SeenFrom(c)[t]));
        var to = cellsB.First(t => SeenFrom(from)[t]);
        var at = a;
        var (i, j) = (from % Columns, from / Columns);
        var (ti, tj) = (to % Columns, to / Columns);
        while ((i, j) != (ti, tj))
        {
            var di = Math.Sign(ti - i);
            // Sideways first where the rest of the way is still open from there.
            if (di != 0 && _inside[i + di, j] && SeenFrom(Cell(i + di, j))[to])
            {
                at = at with { X = di > 0 ? Math.Max(at.X, _xs[i + 1]) : Math.Min(at.X, _xs[i]) };
                i += di;
            }
            else
            {
                var dj = Math.Sign(tj - j);
                at = at with { Y = dj > 0 ? Math.Max(at.Y, _ys[j + 1]) : Math.Min(at.Y, _ys[j]) };
                j += dj;
            }

            yield return at;
        }

        yield return at with { X = b.X };
        yield return b;
    }

    private BitArray SeenFrom(int cell)
    {
        if (!_seen.TryGetValue(cell, out var seen))
        {
            seen = new BitArray(Columns * Rows);
            foreach (var (di, dj) in new[] { (1, 1), (1, -1), (-1, 1), (-1, -1) })
            {
                Quadrant(cell % Columns, cell / Columns, di, dj, seen);
            }

            _seen.Add(cell, seen);
        }

        return seen;
    }

    private void Quadrant(int i0, int j0, int di, int dj, BitArray seen)
    {
        var reached = new bool[Columns, Rows];
        for (var i = i0; i >= 0 && i < Columns; i += di)
        {
            for (var j = j0; j >= 0 && j < Rows; j += dj)
            {
                var open = (i == i0 && j == j0) || (i != i0 && reached[i - di, j]) || (j != j0 && reached[i, j - dj]);
                if (open && _inside[i, j])
                {
                    reached[i, j] = true;
                    seen[Cell(i, j)] = true;
                }
            }
        }
    }

    private ImmutableArray<int> CellsAt(PlanPoint point)
    {
        var cells = ImmutableArray.CreateBuilder<int>(4);
        for (var i = 0; i < Columns; i++)
        {
            for (var j = 0; j < Rows && _xs[i] <= point.X && point.X <= _xs[i + 1]; j++)
            {
                if (_inside[i, j] && _ys[j] <= point.Y && point.Y <= _ys[j + 1])
                {
                    cells.Add(Cell(i, j));
                }
            }
        }

        return cells.ToImmutable();
    }

    private void Mark(List<FramedRoom> rooms, int thickest)
    {
        var voids = new bool[Columns, Rows];
        for (var i = 0; i < Columns; i++)
        {
            for (var j = 0; j < Rows; j++)
            {
                var centre = (X: _xs[i] + _xs[i + 1], Y: _ys[j] + _ys[j + 1]);
                var here = rooms.Where(r => Polygons.HoldsHalf(r, centre.X, centre.Y)).Select(r => r.Source.Kind).ToList();
                voids[i, j] = here.Contains(RoomKind.Void);
                _inside[i, j] = !voids[i, j] && here.Any(k => k is not RoomKind.Outdoors);
            }
        }

        FillWalls(voids, thickest);
        FillWalls(voids, thickest);
    }

    // A strip no wider than a wall between two parts of the region is a wall; the second pass fills where walls cross.
    private void FillWalls(bool[,] voids, int thickest)
    {
        var before = (bool[,])_inside.Clone();
        for (var i = 0; i < Columns; i++)
        {
            for (var j = 0; j < Rows; j++)
            {
                _inside[i, j] = before[i, j] || (!voids[i, j] && (Narrow(before, i, j, 1, 0, thickest) || Narrow(before, i, j, 0, 1, thickest)));
            }
        }
    }

    private bool Narrow(bool[,] inside, int i, int j, int di, int dj, int thickest)
    {
        var (low, high) = (di == 1 ? i : j, di == 1 ? i : j);
        var edges = di == 1 ? _xs : _ys;
        bool At(int k) => di == 1 ? inside[k, j] : inside[i, k];
        while (low >= 0 && !At(low))
        {
            low--;
        }

        while (high < edges.Length - 1 && !At(high))
        {
            high++;
        }

        return low >= 0 && high < edges.Length - 1 && edges[high] - edges[low + 1] <= thickest;
    }

    private int Cell(int i, int j) => j * Columns + i;
}
