using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;

namespace Estimator.Cli.Import;

/// <summary>Makes a job from a neutral plan.</summary>
public static class PlanImport
{
    private const decimal PanelAmperes = 200m;
    private const int PanelSpaces = 40;

    /// <summary>The job: geometry snapped to sixteenths of an inch, a panel set by rule, devices proposed or taken from counts.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="edition">The edition to propose by.</param>
    /// <param name="counts">Device counts by room; null proposes the code minimum.</param>
    /// <exception cref="WrongInputException">The plan is no house: rooms overlap, an id stands twice, an outline has no corners.</exception>
    public static Job ToJob(NeutralPlan plan, CodeEdition edition, DeviceCounts? counts)
    {
        ImmutableArray<Level> levels = [.. plan.Levels.Select(ToLevel)];
        var panelRoom = PanelRoom(levels);
        var job = new Job
        {
            Id = plan.Id,
            Name = plan.Title,
            Origin = $"{plan.Source.Dataset}; {plan.Source.Licence}; {plan.Source.Attribution}",
            Code = new CodeBasis { Edition = edition },
            Levels = levels,
            Panels = [new Panel { Id = "P1", Name = "Service panel", Room = panelRoom.Id, RatingA = Current.FromAmperes(PanelAmperes), Spaces = PanelSpaces }],
            Proposals = [$"The panel's place is assumed: {(panelRoom.Name.Length > 0 ? panelRoom.Name : panelRoom.Id)}, {PanelAmperes:0} A, {PanelSpaces} spaces. Say where it hangs."],
        };
        // What is drawn must be a house before devices are placed in it, and the job must still be one after that.
        Check(job);
        var filled = counts is null ? CodeMinimum.Propose(job) : counts.Fill(job, plan.Id);
        Check(filled);
        return filled;
    }

    private static void Check(Job job)
    {
        var reading = JobFile.Read(JobFile.Write(job), job.Id);
        if (!reading.Ok)
        {
            throw new WrongInputException($"The plan can't be made a job:\n{string.Join('\n', reading.Problems)}");
        }
    }

    private static Level ToLevel(NeutralLevel level)
    {
        var known = level.Rooms.Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        var heights = level.Rooms.Where(r => r.HeightFt is >= 6).Select(r => r.HeightFt!.Value).Order().ToList();
        return new Level
        {
            Id = level.Id,
            Name = level.Name,
            Elevation = Snapped(Math.Max(0, level.ElevationFt)),
            CeilingHeight = heights.Count > 0 ? Snapped(heights[heights.Count / 2]) : Length.FromFeet(8),
            Rooms = [.. level.Rooms.Select(r => ToRoom(level, r))],
            Openings = [.. level.Openings.Where(o => o.Rooms.Any(r => r is not null && known.Contains(r))).Select(o => ToOpening(o, known))],
        };
    }

    private static Room ToRoom(NeutralLevel level, NeutralRoom room) => new()
    {
        Id = room.Id,
        Name = room.Name,
        Kind = PlanWords.Room(room.Type),
        Corners = Ring(room.Polygon),
        Holes = [.. (room.Holes ?? []).Select(Ring)],
        CeilingHeight = room.HeightFt is >= 1 and var height ? Snapped(height) : null,
        Finished = room.Type is not ("attic" or "crawl" or "garage"),
        Fixtures = [.. level.Fixtures.Where(f => f.Room == room.Id).Select(f => (Kind: PlanWords.Fixture(f.Kind), f.At)).Where(f => f.Kind is not null).Select(f => new Fixture(f.Kind!.Value, Point(f.At)))],
    };

    private static Opening ToOpening(NeutralOpening opening, HashSet<string> known)
    {
        var rooms = opening.Rooms.Where(r => r is not null && known.Contains(r)).ToList();
        return new Opening
        {
            Id = opening.Id,
            Kind = PlanWords.Opening(opening.Kind),
            Room = rooms[0]!,
            OtherRoom = rooms.Count > 1 ? rooms[1] : null,
            At = Point(opening.At),
            Width = Snapped(Math.Max(0.1m, opening.WidthFt)),
            Sill = opening.SillFt is { } sill ? Snapped(Math.Max(0, sill)) : null,
            Head = opening.HeadFt is { } head ? Snapped(Math.Max(0, head)) : null,
        };
    }

    // A utility room or garage if there is one, else the hall, else the first room that is lived in, on the lowest such level.
    private static Room PanelRoom(ImmutableArray<Level> levels) => levels.OrderBy(l => l.Elevation)
        .SelectMany((l, order) => l.Rooms.Select(r => (Room: r, order)))
        .OrderBy(x => Rank(x.Room.Kind)).ThenBy(x => x.order).First().Room;

    private static int Rank(RoomKind kind) => kind switch
    {
        RoomKind.Garage => 0,
        RoomKind.Utility => 1,
        RoomKind.Basement => 2,
        RoomKind.Hall => 3,
        RoomKind.Foyer => 4,
        RoomKind.Void or RoomKind.Outdoors or RoomKind.Bathroom or RoomKind.Closet or RoomKind.Crawl or RoomKind.Attic => 9,
        _ => 5,
    };

    private static ImmutableArray<GridPoint> Ring(IReadOnlyList<IReadOnlyList<decimal>> ring)
    {
        var points = ring.Select(Point).ToList();
        return [.. points.Where((p, i) => p != points[(i + 1) % points.Count])];
    }

    private static GridPoint Point(IReadOnlyList<decimal> at) => at.Count == 2
        ? new GridPoint(Snapped(at[0]), Snapped(at[1]))
        : throw new WrongInputException($"plan: a point: found {at.Count} numbers; a pair of feet is accepted.");

    private static Length Snapped(decimal feet) => Math.Abs(feet) <= JobLimits.Feet
        ? Length.FromSixteenths(Length.FromFeet(feet).ToSixteenths())
        : throw new WrongInputException($"plan: a length: found {feet} ft; a length to {JobLimits.Feet} ft is accepted.");
}
