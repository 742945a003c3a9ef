using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.TestKit.Houses;

/// <summary>Makes a level of a random house.</summary>
internal static class LevelGen
{
    private static readonly ImmutableArray<RoomKind> Kinds =
    [
        RoomKind.Living, RoomKind.Kitchen, RoomKind.Bedroom, RoomKind.Bathroom, RoomKind.Hall, RoomKind.Dining, RoomKind.Family, RoomKind.Office,
        RoomKind.Laundry, RoomKind.Garage, RoomKind.Basement, RoomKind.Utility, RoomKind.Foyer, RoomKind.Bedroom, RoomKind.Outdoors,
    ];

    internal static Level Make(Rect floor, int number, int levels, int ceiling, bool finished, Draw draw)
    {
        var cut = Rect.Cut(floor, draw.Int(2, levels > 1 ? 3 : 5), draw).ToList();
        // The first room of a level is never outdoors, so that the panel has a place.
        var rooms = cut.SelectMany((r, i) => RoomShape.Of(r, $"L{number}R{i}", i == 0 ? draw.Pick(RoomKind.Living, RoomKind.Hall, RoomKind.Garage) : draw.Pick(Kinds.AsSpan()), draw)).ToList();
        var filled = rooms.Select(r => RoomFilling.Fill(r, finished && draw.Chance(60), draw)).ToImmutableArray();
        return new Level
        {
            Id = $"L{number}",
            Elevation = Draw.Inches(number * (ceiling + 12)),
            CeilingHeight = Draw.Inches(ceiling),
            Framing = new LevelFraming
            {
                Under = draw.Pick(UnderFloor.Slab, UnderFloor.Crawl),
                JoistDirection = draw.Pick(JoistDirection.ShorterSpan, JoistDirection.ShorterSpan, JoistDirection.AlongX, JoistDirection.AlongY),
                StudSpacing = draw.Chance(15) ? Draw.Inches(24) : null,
            },
            Rooms = filled,
            Openings = [.. Doors(cut, rooms, number, draw), .. Outside(cut, rooms, floor, number, draw)],
        };
    }

    // A door in the wall that two neighbours share, at a point of the first one's wall.
    private static IEnumerable<Opening> Doors(List<Rect> cut, List<Room> rooms, int number, Draw draw)
    {
        foreach (var (a, i) in cut.Select((r, i) => (r, i)))
        {
            foreach (var (b, j) in cut.Select((r, j) => (r, j)))
            {
                if (i == j || !draw.Chance(75))
                {
                    continue;
                }

                var (fromX, toX) = (Math.Max(a.X, b.X), Math.Min(a.Right, b.Right));
                var (fromY, toY) = (Math.Max(a.Y, b.Y), Math.Min(a.Top, b.Top));
                var width = 2 * draw.Int(14, 18);
                if (b.X - a.Right is >= 0 and <= 6 && toY - fromY >= 48)
                {
                    yield return Door(number, i, j, Draw.Point(a.Right, draw.Int(fromY + 20, toY - 20)), width, draw);
                }
                else if (b.Y - a.Top is >= 0 and <= 6 && toX - fromX >= 48)
                {
                    yield return Door(number, i, j, Draw.Point(draw.Int(fromX + 20, toX - 20), a.Top), width, draw);
                }
            }
        }

        foreach (var closet in rooms.Where(r => r.Kind is RoomKind.Closet))
        {
            yield return new Opening
            {
                Id = $"{closet.Id}-door",
                Kind = OpeningKind.Door,
                Room = closet.Id,
                OtherRoom = closet.Id[..^1],
                Width = Draw.Inches(24),
                At = new GridPoint(closet.At!.Value.X + Length.FromSixteenths(closet.Size!.Width.ToSixteenths() / 32 * 16), closet.At.Value.Y),
            };
        }
    }

    private static Opening Door(int number, int a, int b, GridPoint at, int width, Draw draw) => new()
    {
        Id = $"L{number}D{a}-{b}",
        Kind = draw.Chance(12) ? OpeningKind.WideOpening : OpeningKind.Door,
        Room = $"L{number}R{a}",
        OtherRoom = $"L{number}R{b}",
        At = at,
        Width = Draw.Inches(width),
    };

    private static IEnumerable<Opening> Outside(List<Rect> cut, List<Room> rooms, Rect floor, int number, Draw draw)
    {
        for (var i = 0; i < cut.Count; i++)
        {
            var r = cut[i];
            var outline = rooms.First(x => x.Id == $"L{number}R{i}");
            if (r.Y == floor.Y && draw.Chance(55))
            {
                yield return Window($"L{number}W{i}s", outline.Id, Draw.Point(draw.Int(r.X + 20, r.Right - 20), r.Y), draw);
            }

            if (r.X == floor.X && draw.Chance(40))
            {
                yield return Window($"L{number}W{i}w", outline.Id, Draw.Point(r.X, draw.Int(r.Y + 20, r.Top - 20)), draw);
            }
        }

        if (number == 0)
        {
            var front = cut[0];
            yield return new Opening
            {
                Id = "entrance",
                Kind = OpeningKind.EntranceDoor,
                Room = "L0R0",
                Width = Draw.Inches(36),
                At = Draw.Point(front.X + draw.Int(20, front.Width - 20), front.Y),
            };
        }
    }

    private static Opening Window(string id, string room, GridPoint at, Draw draw) => new()
    {
        Id = id,
        Kind = OpeningKind.Window,
        Room = room,
        At = at,
        Width = Draw.Inches(2 * draw.Int(10, 20)),
        Sill = Draw.Inches(draw.Pick(12, 24, 36)),
        Head = Draw.Inches(80),
    };
}
