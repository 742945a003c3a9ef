using System.Collections.Immutable;
using Estimator.Engine;
using Estimator.Engine.Controls;
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

    /// <summary>Everything that the engine chose, stated by the user: places, controls, circuits, runs and their ways.</summary>
    public static Job Pinned(JobEstimate estimate)
    {
        var (layout, wiring) = (estimate.Layout, estimate.Wiring);
        GridPoint Grid(PlanPoint spot) => layout.House.Pose.ToGrid(spot) is var p ? new GridPoint(Length.FromSixteenths(p.X), Length.FromSixteenths(p.Y)) : default;
        // Switches of one box are pinned where the box is: a few inches apart they would leave it when the plan is doubled.
        var boxOf = wiring.Boxes.SelectMany(b => b.Devices.Select(d => (Device: d, b.Place))).ToDictionary(x => x.Device, x => x.Place);
        var placed = layout.Devices.Select((d, i) => (Device: d, Place: boxOf[i])).ToLookup(x => layout.House.Rooms[x.Place.Room].Source.Id, x => new PlacedDevice
        {
            Id = x.Device.Id,
            Kind = x.Device.Kind,
            Serves = x.Device.Serves,
            At = Grid(x.Place.Spot),
            Height = x.Place.HeightFact.AsLength().Value,
            OwnerSupplied = x.Device.OwnerSupplied,
        }, StringComparer.Ordinal);
        var job = EachRoom(layout.House.Job, r => r with { Counts = [], Placed = [.. placed[r.Id]] });
        return job with
        {
            Equipment = [.. job.Equipment.Select(e => layout.Equipment.FirstOrDefault(x => x.Source.Id == e.Id) is { } laid ? e with { Wall = null, At = Grid(laid.Place.Spot) } : e)],
            Panels = [.. job.Panels.Select((p, i) => p with { Wall = null, At = Grid(layout.Panels[i].Place.Spot) })],
            Controls = [.. estimate.Controls.Groups.Select(g => new Control
            {
                Id = g.Id,
                Switches = [.. g.Switches.Select(s => layout.Devices[s].Id)],
                Loads = [.. g.Loads.Select(l => $"{layout.Devices[l.Device].Id}{(l.Part is LoadPart.Fan ? "#fan" : l.Part is LoadPart.Light ? "#light" : "")}")],
            })],
            Pins = new Pins
            {
                Circuits = [.. wiring.Circuits.Select(c => new PinnedCircuit
                {
                    Id = c.Id,
                    Panel = layout.Panels[c.Panel].Source.Id,
                    Outlets = [.. c.Boxes.Select(b => wiring.Boxes[b]).SelectMany(b => b.Equipment >= 0 ? [layout.Equipment[b.Equipment].Source.Id] : b.Devices.Select(d => layout.Devices[d].Id))],
                    Runs = [.. c.Runs.Select(r => wiring.Runs[r]).Select(r => new PinnedRun(r.From < 0 ? layout.Panels[c.Panel].Source.Id : wiring.Boxes[r.From].Id, wiring.Boxes[r.To].Id, r.Path.Way))],
                })],
            },
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
