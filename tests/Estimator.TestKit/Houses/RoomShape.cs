using System.Collections.Immutable;
using Estimator.Engine.House;

namespace Estimator.TestKit.Houses;

/// <summary>Turns the rectangle of a room into a rectangle, an L with or without a closet in its corner, or a room round a shaft.</summary>
internal static class RoomShape
{
    internal static IEnumerable<Room> Of(Rect at, string id, RoomKind kind, Draw draw) => (Math.Min(at.Width, at.Depth), draw.Int(1, 100)) switch
    {
        ( >= 120, <= 14) => Ell(at, id, kind, draw),
        ( >= 120, <= 26) => RoundShaft(at, id, kind, draw),
        (_, <= 40) => [new Room { Id = id, Kind = kind, Corners = Ring(at) }],
        _ => [Rectangle(at, id, kind)],
    };

    internal static ImmutableArray<GridPoint> Ring(Rect r) =>
        [Draw.Point(r.X, r.Y), Draw.Point(r.Right, r.Y), Draw.Point(r.Right, r.Top), Draw.Point(r.X, r.Top)];

    internal static Room Rectangle(Rect r, string id, RoomKind kind) => new()
    {
        Id = id,
        Kind = kind,
        Size = new RectangleSize(Draw.Inches(r.Width), Draw.Inches(r.Depth)),
        At = Draw.Point(r.X, r.Y),
    };

    private static IEnumerable<Room> Ell(Rect r, string id, RoomKind kind, Draw draw)
    {
        var (width, depth) = (draw.Int(40, r.Width / 2), draw.Int(40, r.Depth / 2));
        var (x, y) = (r.Right - width, r.Top - depth);
        yield return new Room
        {
            Id = id,
            Kind = kind,
            Corners = [Draw.Point(r.X, r.Y), Draw.Point(r.Right, r.Y), Draw.Point(r.Right, y), Draw.Point(x, y), Draw.Point(x, r.Top), Draw.Point(r.X, r.Top)],
        };
        if (draw.Chance(60))
        {
            yield return Rectangle(new Rect(x + 5, y + 5, width - 5, depth - 5), $"{id}c", RoomKind.Closet);
        }
    }

    private static IEnumerable<Room> RoundShaft(Rect r, string id, RoomKind kind, Draw draw)
    {
        var shaft = new Rect(r.X + draw.Int(36, r.Width - 72), r.Y + draw.Int(36, r.Depth - 72), 36, draw.Int(24, 36));
        yield return new Room { Id = id, Kind = kind, Corners = Ring(r), Holes = [Ring(shaft)] };
        if (draw.Chance(50))
        {
            yield return Rectangle(shaft, $"{id}v", RoomKind.Void);
        }
    }
}
