using System.Collections.Immutable;

namespace Estimator.Web.Plans;

/// <summary>Finds the place of a room's name: inside the room, as far from its walls and from the signs in it as can be.</summary>
internal static class RoomLabels
{
    private const int Fields = 16;
    private const double HalfLetterDots = 3.2;
    private const double HalfLinesDots = 10;

    internal static SheetPoint Place(ImmutableArray<SheetPoint> outline, string name, SheetFrame frame, ImmutableArray<DrawnOutlet> outlets)
    {
        var (left, right, top, bottom) = (outline.Min(p => p.X), outline.Max(p => p.X), outline.Min(p => p.Y), outline.Max(p => p.Y));
        var middle = new SheetPoint((left + right) / 2, (top + bottom) / 2);
        var near = outlets.Where(o => o.At.X >= left && o.At.X <= right && o.At.Y >= top && o.At.Y <= bottom).Select(o => o.At).ToList();
        var (halfWidth, halfHeight) = (name.Length * HalfLetterDots * frame.Dot, HalfLinesDots * frame.Dot);
        double Clear(SheetPoint p) => near.Select(o => Beyond(o, p, halfWidth, halfHeight)).Append(Walls(outline, p, halfWidth)).Min();
        return Enumerable.Range(1, Fields - 1).SelectMany(i => Enumerable.Range(1, Fields - 1).Select(j =>
                new SheetPoint(left + (right - left) * i / Fields, top + (bottom - top) * j / Fields)))
            .Where(p => Holds(outline, p)).OrderByDescending(p => Math.Round(Math.Min(Clear(p), frame.Sign), 1, MidpointRounding.AwayFromZero))
            .ThenBy(p => p.DistanceTo(middle)).FirstOrDefault(middle);
    }

    /// <summary>Whether an outline holds a point: a ray to the right crosses it an odd number of times.</summary>
    internal static bool Holds(IReadOnlyList<SheetPoint> outline, SheetPoint point)
    {
        var inside = false;
        for (var (i, j) = (0, outline.Count - 1); i < outline.Count; j = i++)
        {
            var (a, b) = (outline[i], outline[j]);
            if (a.Y > point.Y != b.Y > point.Y && point.X < (b.X - a.X) * (point.Y - a.Y) / (b.Y - a.Y) + a.X)
            {
                inside = !inside;
            }
        }

        return inside;
    }

    // How far a sign lies beyond the field that the words take.
    private static double Beyond(SheetPoint sign, SheetPoint words, double halfWidth, double halfHeight) =>
        Math.Max(Math.Abs(sign.X - words.X) - halfWidth, Math.Abs(sign.Y - words.Y) - halfHeight);

    private static double Walls(ImmutableArray<SheetPoint> outline, SheetPoint words, double halfWidth) =>
        new[] { words, words with { X = words.X - halfWidth }, words with { X = words.X + halfWidth } }.Min(p => Holds(outline, p) ? FromWalls(outline, p) : 0);

    private static double FromWalls(ImmutableArray<SheetPoint> outline, SheetPoint point) =>
        Enumerable.Range(0, outline.Length).Min(i => FromSide(outline[i], outline[(i + 1) % outline.Length], point));

    private static double FromSide(SheetPoint a, SheetPoint b, SheetPoint point)
    {
        var (direction, length) = (a.DirectionTo(b), a.DistanceTo(b));
        var along = Math.Clamp((point.X - a.X) * direction.X + (point.Y - a.Y) * direction.Y, 0, length);
        return a.Along(direction, along).DistanceTo(point);
    }
}
