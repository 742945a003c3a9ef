using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.TestKit.Houses;

/// <summary>The same job drawn or listed in another way, or changed in one respect.</summary>
public static class JobTransforms
{
    private static readonly Length Away = Length.FromFeet(200);

    /// <summary>Rectangles as polygons, so that every transform acts on corners.</summary>
    public static Job AsPolygons(Job job) => EachRoom(job, r => r.Size is { } size && r.At is { } at
        ? r with
        {
            Size = null,
            At = null,
            Corners = [at, new(at.X + size.Width, at.Y), new(at.X + size.Width, at.Y + size.Depth), new(at.X, at.Y + size.Depth)],
        }
        : r);

    public static Job Moved(Job job) => Points(job, p => new GridPoint(p.X + Length.FromInches(777), p.Y - Length.FromInches(333)), swap: false);

    public static Job Turned(Job job) => Points(job, p => new GridPoint(Away - p.Y, p.X), swap: true);

    public static Job Mirrored(Job job) => Points(job, p => new GridPoint(Away - p.X, p.Y), swap: false);

    public static Job Shuffled(Job job) => job with
    {
        Levels = [.. job.Levels.Reverse().Select(l => l with { Rooms = [.. l.Rooms.Reverse().Select(r => r with { Counts = [.. r.Counts.Reverse()] })], Openings = [.. l.Openings.Reverse()] })],
        Equipment = [.. job.Equipment.Reverse()],
    };

    /// <summary>Every coordinate of the plan doubled, walls and openings with it; heights stay.</summary>
    public static Job Doubled(Job job)
    {
        var doubled = Points(job, p => new GridPoint(p.X * 2, p.Y * 2), swap: false);
        return doubled with
        {
            Practice = doubled.Practice with { MaximumWallThickness = Length.FromInches(2 * 15.6m) },
            Levels = [.. doubled.Levels.Select(l => l with { Openings = [.. l.Openings.Select(o => o with { Width = o.Width * 2 })] })],
        };
    }

    /// <summary>Every ceiling a foot higher, the floors above with it.</summary>
    public static Job Raised(Job job)
    {
        var foot = Length.FromFeet(1);
        return job with
        {
            Levels = [.. job.Levels.Select(l => l with
            {
                CeilingHeight = l.CeilingHeight + foot,
                Elevation = l.Elevation + foot * job.Levels.Count(below => below.Elevation < l.Elevation),
                Rooms = [.. l.Rooms.Select(r => r with { CeilingHeight = r.CeilingHeight is { } own ? own + foot : null })],
            })],
        };
    }

    private static Job EachRoom(Job job, Func<Room, Room> change) => job with { Levels = [.. job.Levels.Select(l => l with { Rooms = [.. l.Rooms.Select(change)] })] };

    private static Job Points(Job job, Func<GridPoint, GridPoint> move, bool swap)
    {
        job = AsPolygons(job);
        GridPoint? Maybe(GridPoint? at) => at is { } p ? move(p) : null;
        WallSpot? Spot(WallSpot? wall) => wall is null ? null : wall with { Offset = Scale(move, wall.Offset) };
        return job with
        {
            Levels = [.. job.Levels.Select(l => l with
            {
                Framing = swap ? l.Framing with { JoistDirection = Swapped(l.Framing.JoistDirection) } : l.Framing,
                Rooms = [.. l.Rooms.Select(r => r with
                {
                    Corners = [.. r.Corners.Select(move)],
                    Holes = [.. r.Holes.Select(h => (ImmutableArray<GridPoint>)[.. h.Select(move)])],
                    Placed = [.. r.Placed.Select(p => p with { At = Maybe(p.At), Wall = Spot(p.Wall) })],
                    Fixtures = [.. r.Fixtures.Select(f => f with { At = Maybe(f.At) })],
                })],
                Openings = [.. l.Openings.Select(o => o with { At = Maybe(o.At), Wall = Spot(o.Wall) })],
            })],
            Equipment = [.. job.Equipment.Select(e => e with { At = Maybe(e.At), Wall = Spot(e.Wall) })],
            Panels = [.. job.Panels.Select(p => p with { At = Maybe(p.At), Wall = Spot(p.Wall) })],
        };
    }

    private static Length Scale(Func<GridPoint, GridPoint> move, Length offset)
    {
        var (a, b) = (move(new GridPoint(Length.Zero, Length.Zero)), move(new GridPoint(offset, Length.Zero)));
        return (b.X - a.X).Abs() + (b.Y - a.Y).Abs();
    }

    private static JoistDirection Swapped(JoistDirection direction) => direction switch
    {
        JoistDirection.AlongX => JoistDirection.AlongY,
        JoistDirection.AlongY => JoistDirection.AlongX,
        _ => direction,
    };
}
