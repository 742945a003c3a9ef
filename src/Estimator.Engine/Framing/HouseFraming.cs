using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Framing;

/// <summary>Turns the user's house into its canonical pose.</summary>
/// <remarks>
/// Of the eight turns and mirrors the one is taken whose content, listed by geometry, comes first; rooms and openings are ordered by the same
/// content. So a house that is moved, turned, mirrored or listed in another order is wired alike.
/// </remarks>
public static class HouseFraming
{
    /// <summary>Number of the page of the explanation book that holds the user's figures.</summary>
    public const int PageNumber = 0;

    /// <summary>The house in canonical pose.</summary>
    public static FramedHouse Frame(Job job)
    {
        var page = new PageWriter(PageNumber);
        var findings = new List<Finding>();
        var levels = job.Levels.Select((l, i) => (Level: l, Index: i)).OrderBy(l => l.Level.Elevation).ThenBy(l => l.Index).ToList();
        var outlines = levels.SelectMany((l, order) => LevelOutlines(l.Level, l.Index, order, page, findings)).ToList();
        var pose = PoseChoice.For(job, outlines);
        var rooms = Rooms(job, outlines, pose, page);
        var framedLevels = levels.Select((l, order) => Framed(l.Level, l.Index, order, rooms, pose, page)).ToImmutableArray();
        var openings = OpeningPlacing.Place(job, rooms, framedLevels, pose, findings);
        return new FramedHouse
        {
            Job = job,
            Pose = pose,
            Levels = framedLevels,
            Rooms = rooms,
            Openings = openings,
            Findings = [.. findings],
            Page = page.ToPage(),
        };
    }

    private static IEnumerable<RoomOutline> LevelOutlines(Level level, int levelIndex, int order, PageWriter page, List<Finding> findings)
    {
        var path = $"$.levels[{levelIndex}]";
        var arranged = new RoomArranging(level, path, page);
        foreach (var room in level.Rooms.Where((room, r) => arranged.IsArranged(r) || room.PlaceAssumed))
        {
            findings.Add(new Finding
            {
                Code = "room-arranged",
                Severity = Severity.Note,
                Where = [room.Id],
                Text = FormattableString.Invariant($"{room.Called()} has sizes and no place; it was set beside the other rooms, so cable lengths are assumed."),
            });
        }

        for (var r = 0; r < level.Rooms.Length; r++)
        {
            yield return RoomOutline.Of(level, r, path, order, arranged, page);
        }
    }

    private static ImmutableArray<FramedRoom> Rooms(Job job, List<RoomOutline> outlines, Pose pose, PageWriter page)
    {
        var turned = outlines.Select(o => (Outline: o, Ring: CanonicalRing.Of(o, pose))).ToList();
        var ordered = turned.OrderBy(t => RoomKey.Of(job, t.Outline, t.Ring, pose), StringComparer.Ordinal).ThenBy(t => t.Outline.Room.Id, StringComparer.Ordinal);
        return [.. ordered.Select((t, i) => Framed(t.Outline, t.Ring, pose, i, page))];
    }

    private static FramedRoom Framed(RoomOutline outline, CanonicalRing ring, Pose pose, int index, PageWriter page) => new()
    {
        Index = index,
        Source = outline.Room,
        Level = outline.Level,
        Corners = ring.Corners,
        Holes = [.. outline.Holes.Select(h => CanonicalRing.Hole(h, pose))],
        CornerFacts = [.. ring.Order.Select(i => outline.Facts[i])],
        HoleFacts = outline.HoleFacts,
        AreaSquareFeet = outline.Area(page),
        CeilingHeight = outline.Ceiling,
        Ceiling = outline.Ceiling.AsLength().Value.ToSixteenths(),
        Arranged = outline.Arranged,
    };

    private static FramedLevel Framed(Level level, int index, int order, ImmutableArray<FramedRoom> rooms, Pose pose, PageWriter page)
    {
        ImmutableArray<int> own = [.. rooms.Where(r => r.Level == order).Select(r => r.Index)];
        var corners = own.SelectMany(r => rooms[r].Corners).DefaultIfEmpty().ToList();
        var wide = corners.Max(c => c.X) - corners.Min(c => c.X) > corners.Max(c => c.Y) - corners.Min(c => c.Y);
        return new FramedLevel
        {
            Index = order,
            Source = level,
            Elevation = level.Elevation.ToSixteenths(),
            Rooms = own,
            JoistsAlongX = level.Framing.JoistDirection is JoistDirection.ShorterSpan
                ? !wide
                : (level.Framing.JoistDirection is JoistDirection.AlongX) != pose.SwapAxes,
            StudSpacing = level.Framing.StudSpacing is { } stud
                ? page.Given($"$.levels[{index}].framing.stud_spacing", "Stud spacing", stud)
                : PracticeDefaults.StudSpacing.ReadInches(page),
            StudDepth = level.Framing.StudDepth is { } depth
                ? page.Given($"$.levels[{index}].framing.stud_depth", "Stud depth", depth)
                : PracticeDefaults.StudDepth.ReadInches(page),
            JoistSpacing = level.Framing.JoistSpacing is { } joist
                ? page.Given($"$.levels[{index}].framing.joist_spacing", "Joist spacing", joist)
                : PracticeDefaults.JoistSpacing.ReadInches(page),
            OpenBelow = order > 0 || level.Framing.Under is UnderFloor.Crawl,
        };
    }
}
