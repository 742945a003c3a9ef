using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Framing;

/// <summary>A room's outline on the user's grid, with the figures that the user gave.</summary>
internal sealed record RoomOutline
{
    internal required Room Room { get; init; }

    internal required int Level { get; init; }

    /// <summary>Corners in the user's order, in sixteenths.</summary>
    internal required ImmutableArray<PlanPoint> Corners { get; init; }

    internal required ImmutableArray<(Fact X, Fact Y)> Facts { get; init; }

    internal required ImmutableArray<ImmutableArray<PlanPoint>> Holes { get; init; }

    internal required ImmutableArray<ImmutableArray<(Fact X, Fact Y)>> HoleFacts { get; init; }

    internal required Fact Ceiling { get; init; }

    internal required bool Arranged { get; init; }

    internal static RoomOutline Of(Level own, int index, string levelPath, int level, RoomArranging arranged, PageWriter page)
    {
        var (room, path) = (own.Rooms[index], $"{levelPath}.rooms[{index}]");
        var facts = room.Size is { } size
            ? Rectangle(size, arranged.IsArranged(index) ? arranged.PlaceOf(index) : At(room, path, page), path, page)
            : Ring(room.Corners, $"{path}.corners", page);
        var holes = room.Holes.Select((h, i) => Ring(h, $"{path}.holes[{i}]", page)).ToImmutableArray();
        return new RoomOutline
        {
            Room = room,
            Level = level,
            Corners = Points(facts),
            Facts = facts,
            Holes = [.. holes.Select(Points)],
            HoleFacts = holes,
            Ceiling = room.CeilingHeight is { } ceiling
                ? Snap(page, $"{path}.ceiling_height", ceiling)
                : Snap(page, $"{levelPath}.ceiling_height", own.CeilingHeight),
            Arranged = arranged.IsArranged(index) || room.PlaceAssumed,
        };
    }

    /// <summary>Floor area less holes, from the corners.</summary>
    internal Fact Area(PageWriter page)
    {
        var outline = Area(Facts, "Area of the outline", page);
        return HoleFacts.IsEmpty ? outline : page.Compute(
            Operation.Difference, "area-less-holes", "Floor area", Unit.SquareFeet, [outline, .. HoleFacts.Select(h => Area(h, "Area of a hole", page))]);
    }

    private static Fact Area(ImmutableArray<(Fact X, Fact Y)> ring, string label, PageWriter page)
    {
        List<Fact> strips = [];
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
            strips.Add(page.Compute(
                Operation.Difference, "area-strip", "Twice the area between a side and the origin", Unit.SquareFeet,
                Times(page, a.X, b.Y), Times(page, b.X, a.Y)));
        }

        var twice = page.Sum("area-outline", "Twice the area of the outline", Unit.SquareFeet, strips);
        var positive = page.Compute(Operation.Apart, "area-outline", "Twice the area, whichever way round it is listed", Unit.SquareFeet, twice, page.Constant("Nothing", 0, Unit.SquareFeet));
        return page.Compute(Operation.Quotient, "area-outline", label, Unit.SquareFeet, positive, page.Constant("Halves", 2));
    }

    private static ImmutableArray<(Fact X, Fact Y)> Ring(ImmutableArray<GridPoint> corners, string path, PageWriter page) =>
        [.. corners.Select((c, i) => (Snap(page, $"{path}[{i}][0]", c.X), Snap(page, $"{path}[{i}][1]", c.Y)))];

    private static ImmutableArray<PlanPoint> Points(ImmutableArray<(Fact X, Fact Y)> ring) => [.. ring.Select(f => new PlanPoint(Sixteenths(f.X), Sixteenths(f.Y)))];

    private static Fact Times(PageWriter page, Fact a, Fact b) => page.Compute(
        Operation.Product, "area-product", "Product of coordinates", Unit.SquareFeet,
        page.Compute(Operation.InFeet, "feet", "In feet", Unit.Feet, a), page.Compute(Operation.InFeet, "feet", "In feet", Unit.Feet, b));

    private static ImmutableArray<(Fact X, Fact Y)> Rectangle(RectangleSize size, (Fact X, Fact Y) at, string path, PageWriter page)
    {
        var (x, y) = at;
        var (width, depth) = (Snap(page, $"{path}.size.width", size.Width), Snap(page, $"{path}.size.depth", size.Depth));
        var right = page.Compute(Operation.Sum, "room-far-side", "Far side of the room", Unit.Length, x, width);
        var top = page.Compute(Operation.Sum, "room-far-side", "Far side of the room", Unit.Length, y, depth);
        return [(x, y), (right, y), (right, top), (x, top)];
    }

    private static (Fact X, Fact Y) At(Room room, string path, PageWriter page) =>
        (Snap(page, $"{path}.at[0]", room.At?.X ?? Length.Zero), Snap(page, $"{path}.at[1]", room.At?.Y ?? Length.Zero));

    /// <summary>A length of the user, to the sixteenth.</summary>
    internal static Fact Snap(PageWriter page, string path, Length length)
    {
        var given = page.Given(path, "As stated", length);
        var step = Length.FromSixteenths(1).ToNanometres();
        return length.ToNanometres() % step == 0
            ? given
            : page.Compute(Operation.RoundNearest, "to-the-sixteenth", "To the nearest sixteenth of an inch", Unit.Length, given, page.Constant("Sixteenth of an inch", (int)step, Unit.Length));
    }

    private static int Sixteenths(Fact fact) => fact.AsLength().Value.ToSixteenths();
}
