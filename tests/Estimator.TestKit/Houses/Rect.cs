namespace Estimator.TestKit.Houses;

/// <summary>A rectangle of a floor, in whole inches.</summary>
internal readonly record struct Rect(int X, int Y, int Width, int Depth)
{
    internal int Right => X + Width;

    internal int Top => Y + Depth;

    /// <summary>Cuts a floor into so many rectangles with a wall's thickness between them; fewer where they would be too small.</summary>
    internal static IEnumerable<Rect> Cut(Rect whole, int rooms, Draw draw)
    {
        const int Least = 60;
        var (wide, gap) = (whole.Width >= whole.Depth, draw.Pick(0, 4, 5, 6));
        var length = wide ? whole.Width : whole.Depth;
        if (rooms < 2 || length < 2 * Least + gap)
        {
            return [whole];
        }

        var first = draw.Int(1, rooms - 1);
        var at = Math.Clamp(length * first / rooms + draw.Int(-12, 12), Least, length - Least - gap);
        var (a, b) = wide
            ? (whole with { Width = at }, whole with { X = whole.X + at + gap, Width = length - at - gap })
            : (whole with { Depth = at }, whole with { Y = whole.Y + at + gap, Depth = length - at - gap });
        return [.. Cut(a, first, draw), .. Cut(b, rooms - first, draw)];
    }
}
