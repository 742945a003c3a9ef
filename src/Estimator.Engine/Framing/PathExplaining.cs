using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Framing;

/// <summary>Explains the lengths of a way by the places of its ends, the corners that it turns and the heights that it climbs.</summary>
internal sealed class PathExplaining(FramedHouse house, PageWriter page)
{
    internal RunPath Explain(PathDraft draft)
    {
        var horizontal = Horizontal(draft);
        var crossed = draft.Way is RunWay.AlongWalls ? horizontal : Across(draft);
        return new RunPath
        {
            Way = draft.Way,
            Turns = draft.Turns,
            Horizontal = horizontal,
            Vertical = Vertical(draft),
            AlongMembers = page.Compute(Operation.Difference, "way-along", "Part of the way along members", Unit.Length, horizontal, crossed),
            Bores = Bores(draft, crossed),
            Bridged = draft.Bridged,
        };
    }

    private Fact Horizontal(PathDraft draft)
    {
        List<Fact> legs = [];
        var spots = draft.Turns.Select(t => t.Spot).ToList();
        for (var i = 1; i < spots.Count; i++)
        {
            if (spots[i] != spots[i - 1])
            {
                legs.Add(Leg(draft, spots[i - 1], spots[i]));
            }
        }

        var sum = page.Sum("way-horizontal", "Horizontal way through the framing", Unit.Length, legs);
        var measured = Length.FromSixteenths(draft.Length.Horizontal).ToNanometres();
        return sum.Value == measured ? sum : ByLegs(draft, measured);
    }

    // Each turn is a corner of a room or the place of an end, so both coordinates of each point are figures that the user or the layout gave.
    private Fact Leg(PathDraft draft, PlanPoint a, PlanPoint b)
    {
        var (from, to) = (Coordinates(draft, a), Coordinates(draft, b));
        var operation = draft.Way is RunWay.AlongWalls ? Operation.StraightDistance : Operation.SquareDistance;
        return page.Compute(operation, "way-leg", "From one turn to the next", Unit.Length, from.X, from.Y, to.X, to.Y);
    }

    private (Fact X, Fact Y) Coordinates(PathDraft draft, PlanPoint spot)
    {
        foreach (var end in new[] { draft.From, draft.To })
        {
            if (end.Spot == spot)
            {
                return (end.X, end.Y);
            }
        }

        var grid = house.Pose.ToGrid(spot);
        var corner = house.Rooms.SelectMany(r => r.Corners.Select((c, i) => (Corner: c, Fact: r.CornerFacts[i]))).FirstOrDefault(c => c.Corner == spot);
        return corner.Corner == spot && corner.Fact.X.Unit is Unit.Length
            ? corner.Fact
            : (Coordinate(draft, grid.X, alongX: true), Coordinate(draft, grid.Y, alongX: false));
    }

    // A turn where the line of one corner crosses that of another: each coordinate is found among the corners and ends.
    private Fact Coordinate(PathDraft draft, int grid, bool alongX)
    {
        var value = Length.FromSixteenths(grid).ToNanometres();
        var known = house.Rooms.SelectMany(r => r.CornerFacts).Concat([(draft.From.X, draft.From.Y), (draft.To.X, draft.To.Y)])
            .Select(f => alongX ? f.X : f.Y).FirstOrDefault(f => f.Value == value && f.Unit is Unit.Length);
        return known.Unit is Unit.Length ? known : page.Given("$.levels", "A point inside the framing", value, Unit.Length);
    }

    // Where a place outside the framing reaches its nearest point first, the legs are explained one by one as they were measured.
    private Fact ByLegs(PathDraft draft, long measured)
    {
        var between = page.Compute(
            Operation.SquareDistance, "way-leg", "Square distance of the ends", Unit.Length, draft.From.X, draft.From.Y, draft.To.X, draft.To.Y);
        var detour = page.Given("$.levels", "Detour round what lies outside the framing", measured - between.Value, Unit.Length);
        return page.Compute(Operation.Sum, "way-horizontal", "Horizontal way through the framing", Unit.Length, between, detour);
    }

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

    private Fact Bores(PathDraft draft, Fact crossed)
    {
        var members = page.Compute(Operation.Quotient, "way-members", "Members crossed", Unit.Each, crossed, draft.Spacing);
        var whole = page.Compute(Operation.RoundDown, "way-bores", "Whole members", Unit.Each, members, page.Constant("One", 1, Unit.Each));
        return page.Compute(
            Operation.Sum, "way-bores", "Holes to bore", Unit.Each, whole, page.Constant("Plates and corner studs", draft.MoreBores, Unit.Each));
    }

    private Fact Across(PathDraft draft)
    {
        var byX = house.Levels[draft.From.Level].JoistsAlongX == house.Pose.SwapAxes;
        List<Fact> parts = [];
        for (var i = 1; i < draft.Turns.Length; i++)
        {
            var (a, b) = (Coordinates(draft, draft.Turns[i - 1].Spot), Coordinates(draft, draft.Turns[i].Spot));
            var (from, to) = byX ? (a.X, b.X) : (a.Y, b.Y);
            if (from.Value != to.Value)
            {
                parts.Add(page.Compute(Operation.Apart, "way-across", "Across the joists", Unit.Length, from, to));
            }
        }

        return page.Sum("way-across", "Part of the way across the joists", Unit.Length, parts);
    }
}
