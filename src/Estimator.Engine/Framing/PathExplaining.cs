using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Framing;

/// <summary>Explains the lengths of a way by the places of its ends, the spots where it turns and the heights that it climbs.</summary>
internal sealed class PathExplaining(FramedHouse house, PageWriter page)
{
    internal RunPath Explain(PathDraft draft)
    {
        var legs = Legs(draft);
        var horizontal = page.Sum("way-horizontal", "Horizontal way through the framing", Unit.Length, [.. legs.Select(l => Leg(draft, l))]);
        var across = draft.Way is RunWay.AlongWalls ? [] : AcrossByLevel(legs);
        var crossed = draft.Way is RunWay.AlongWalls ? horizontal
            : page.Sum("way-across", "Part of the way across the joists", Unit.Length, [.. across.Select(a => a.Across)]);
        return new RunPath
        {
            Way = draft.Way,
            Turns = draft.Turns,
            Horizontal = horizontal,
            Vertical = Vertical(draft),
            AlongMembers = page.Compute(Operation.Difference, "way-along", "Part of the way along members", Unit.Length, horizontal, crossed),
            Bores = Bores(draft, draft.Way is RunWay.AlongWalls ? [Whole(crossed, house.Levels[draft.From.Level].StudSpacing)] : across.Select(a => Whole(a.Across, house.Levels[a.Level].JoistSpacing))),
            Bridged = draft.Bridged,
        };
    }

    // The horizontal pieces of a way, each between two turns; rises and drops between them have no length here.
    private List<PathPiece> Legs(PathDraft draft)
    {
        var spots = draft.Turns.Select((t, i) => draft.Way is RunWay.AlongWalls ? OnWall(draft, i) : Coordinates(draft, t.Spot)).ToList();
        return [.. Enumerable.Range(1, spots.Count - 1).Where(i => draft.Turns[i].Spot != draft.Turns[i - 1].Spot)
            .Select(i => new PathPiece(draft.Way is RunWay.Underfloor ? house.Levels[draft.From.Level].JoistsUnder : draft.Turns[i].Level, spots[i - 1], spots[i]))];
    }

    private Fact Leg(PathDraft draft, PathPiece leg)
    {
        var operation = draft.Way is RunWay.AlongWalls ? Operation.StraightDistance : Operation.SquareDistance;
        return page.Compute(operation, "way-leg", "From one turn to the next", Unit.Length, leg.From.X, leg.From.Y, leg.To.X, leg.To.Y);
    }

    private (Fact X, Fact Y) OnWall(PathDraft draft, int index)
    {
        var turn = draft.OnWalls[index];
        foreach (var end in new[] { draft.From, draft.To })
        {
            if (turn.Spot == end.Spot)
            {
                return (end.X, end.Y);
            }
        }

        var corners = house.Rooms[turn.Room].CornerFacts;
        var (a, b) = (corners[turn.Side], corners[(turn.Side + 1) % corners.Length]);
        if (turn.Offset == 0)
        {
            return a;
        }

        var (along, whole) = (page.Constant("Sixteenths along the wall", turn.Offset), page.Constant("Sixteenths of the wall", WallSpots.LengthOf(house.Rooms[turn.Room], turn.Side)));
        return (
            page.Compute(Operation.PartWay, "spot-on-wall", "Where the way turns", Unit.Length, a.X, b.X, along, whole),
            page.Compute(Operation.PartWay, "spot-on-wall", "Where the way turns", Unit.Length, a.Y, b.Y, along, whole));
    }

    // A way over or under the rooms turns where it began or ends, at a corner, or where the line of one of these crosses that of another.
    private (Fact X, Fact Y) Coordinates(PathDraft draft, PlanPoint spot) => PlanFacts.At(house, spot, [(draft.From.X, draft.From.Y), (draft.To.X, draft.To.Y)]);

    private Fact Vertical(PathDraft draft) => draft.Way switch
    {
        RunWay.AlongWalls => page.Compute(
            Operation.Apart, "way-level-change", "Difference of box heights", Unit.Length, draft.From.HeightFact, draft.To.HeightFact),
        RunWay.Underfloor => page.Compute(
            Operation.Sum, "way-rises", "Down through the floor and up again", Unit.Length, draft.From.HeightFact, draft.To.HeightFact, Plate(), Plate()),
        _ when draft.From.Level == draft.To.Level => page.Compute(
            Operation.Sum, "way-rises", "Rise and drop from the ceiling", Unit.Length, Drop(draft.From), Drop(draft.To)),
        _ => page.Compute(Operation.Apart, "way-climb", "Height climbed from level to level", Unit.Length, Altitude(draft.To), Altitude(draft.From)),
    };

    private Fact Drop(Placement place)
    {
        if (place.Mount is Mount.Ceiling)
        {
            return page.Constant("No drop at a ceiling box", 0, Unit.Length);
        }

        var room = house.Rooms[place.Room];
        var drop = page.Compute(
            Operation.Difference, "way-drop", "Ceiling less box height", Unit.Length,
            page.Compute(Operation.Sum, "way-ceiling", "Ceiling and plates", Unit.Length, room.CeilingHeight, Plate()), place.HeightFact);
        return drop.Value >= 0 ? drop : page.Compute(Operation.Maximum, "way-drop", "No drop above the ceiling", Unit.Length, drop, page.Constant("Nothing", 0, Unit.Length));
    }

    private Fact Altitude(Placement place)
    {
        var level = house.Levels[place.Level];
        var index = house.Job.Levels.IndexOf(level.Source);
        var floor = page.Given($"$.levels[{index}].elevation", "Floor above the lowest floor", Length.FromSixteenths(level.Elevation));
        return place.Mount is Mount.Ceiling
            ? page.Compute(Operation.Sum, "altitude", "Height of the ceiling box", Unit.Length, floor, house.Rooms[place.Room].CeilingHeight, Plate())
            : page.Compute(Operation.Sum, "altitude", "Height of the box", Unit.Length, floor, place.HeightFact);
    }

    private Fact Plate() => PracticeDefaults.PlateThickness.ReadInches(page);

    private Fact Whole(Fact crossed, Fact spacing)
    {
        var members = page.Compute(Operation.Quotient, "way-members", "Members crossed", Unit.Each, crossed, spacing);
        return page.Compute(Operation.RoundDown, "way-bores", "Whole members", Unit.Each, members, page.Constant("One", 1, Unit.Each));
    }

    private Fact Bores(PathDraft draft, IEnumerable<Fact> members)
    {
        List<Fact> holes = [.. members];
        if (draft.Corners > 0)
        {
            holes.Add(page.Compute(
                Operation.Product, "way-corners", "Studs at corners", Unit.Each,
                page.Constant("Corners that the way passes", draft.Corners, Unit.Each), WiringSettings.CornerStuds.Read(page, Unit.Factor)));
        }

        if (draft.Plates > 0)
        {
            holes.Add(page.Constant("Plates that the way passes", draft.Plates, Unit.Each));
        }

        return page.Sum("way-bores", "Holes to bore", Unit.Each, holes);
    }

    private List<(int Level, Fact Across)> AcrossByLevel(List<PathPiece> legs) =>
        [.. legs.GroupBy(l => l.JoistsOf).Select(g => (g.Key, page.Sum("way-across", "Across the joists of a level", Unit.Length, [.. g.Select(Across).OfType<Fact>()])))];

    private Fact? Across(PathPiece leg)
    {
        var byX = house.Levels[leg.JoistsOf].JoistsAlongX == house.Pose.SwapAxes;
        var (from, to) = byX ? (leg.From.X, leg.To.X) : (leg.From.Y, leg.To.Y);
        return from.Value == to.Value ? null : page.Compute(Operation.Apart, "way-across", "Across the joists", Unit.Length, from, to);
    }

    private sealed record PathPiece(int JoistsOf, (Fact X, Fact Y) From, (Fact X, Fact Y) To);
}
