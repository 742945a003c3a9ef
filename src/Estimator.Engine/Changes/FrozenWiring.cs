using System.Collections.Immutable;
using Estimator.Engine.Controls;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Panels;
using Estimator.Engine.Wiring.Circuits;

namespace Estimator.Engine.Changes;

/// <summary>States all that the engine chose, so that what was sold, or is in the wall, stays: places, controls, circuits, runs and their ways.</summary>
/// <remarks>The frozen job has the same quantities and the same price. What is added later joins a frozen circuit that takes more, or makes one of its own.</remarks>
public static class FrozenWiring
{
    /// <summary>The job of an estimate with its wiring frozen.</summary>
    public static Job Pin(JobEstimate estimate)
    {
        var (layout, job) = (estimate.Layout, estimate.House.Job);
        var rooms = estimate.House.Rooms.ToDictionary(r => r.Source.Id, StringComparer.Ordinal);
        var placed = Placed(estimate).ToLookup(x => x.Room, x => x.Device, StringComparer.Ordinal);
        return job with
        {
            Levels = [.. job.Levels.Select(l => l with { Framing = l.Framing with { JoistDirection = Joists(estimate.House, l) }, Rooms = [.. l.Rooms.Select(r => Kept(layout, rooms[r.Id], r) with { Counts = [], Placed = [.. r.Placed, .. placed[r.Id]] })] })],
            Equipment = [.. job.Equipment.Select(e => e.At is null && e.Wall is null && layout.Equipment.FirstOrDefault(x => x.Source.Id == e.Id) is { } laid ? e with { At = Point(layout, laid.Place), Wall = OnWall(layout, laid.Place) } : e)],
            Panels = [.. job.Panels.Select((p, i) => p.At is null && p.Wall is null ? p with { At = Point(layout, layout.Panels[i].Place), Wall = OnWall(layout, layout.Panels[i].Place) } : p)],
            Controls = [.. estimate.Controls.Groups.Where(g => !g.Switches.IsEmpty).Select(g => Stated(layout, g))],
            Pins = new Pins
            {
                Circuits = [.. estimate.Wiring.Circuits.Select(c => Circuit(estimate, c))],
                Pose = new PinnedPose(estimate.House.Pose.SwapAxes, estimate.House.Pose.FlipX, estimate.House.Pose.FlipY),
            },
        };
    }

    // Joists that span the shorter way would turn where a level grows.
    private static JoistDirection Joists(FramedHouse house, Level level) =>
        house.Levels.First(l => l.Source.Id == level.Id).JoistsAlongX != house.Pose.SwapAxes ? JoistDirection.AlongX : JoistDirection.AlongY;

    // A room that the program arranged keeps its place; it stays an assumed one.
    private static Room Kept(HouseLayout layout, FramedRoom framed, Room room)
    {
        if (room.Size is null || room.At is not null)
        {
            return room;
        }

        List<GridPoint> corners = [.. framed.Corners.Select(c => Grid(layout, c))];
        return room with { At = new GridPoint(corners.Min(c => c.X), corners.Min(c => c.Y)), PlaceAssumed = true };
    }

    // Switches of one box stand where the box does, so that they share it again.
    private static IEnumerable<(string Room, PlacedDevice Device)> Placed(JobEstimate estimate)
    {
        var layout = estimate.Layout;
        var boxOf = estimate.Wiring.Boxes.SelectMany(b => b.Devices.Select(d => (Device: d, b.Place))).ToDictionary(x => x.Device, x => x.Place);
        var stated = estimate.House.Rooms.SelectMany(r => r.Source.Placed).Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        return layout.Devices.Select((d, i) => (Device: d, Place: boxOf.GetValueOrDefault(i, d.Place))).Where(x => !stated.Contains(x.Device.Id)).Select(x => (layout.House.Rooms[x.Place.Room].Source.Id, new PlacedDevice
        {
            Id = x.Device.Id,
            Kind = x.Device.Kind,
            Serves = x.Device.Serves,
            At = Point(layout, x.Place),
            Wall = OnWall(layout, x.Place),
            Height = x.Place.Mount is Mount.Wall ? x.Place.HeightFact.AsLength().Value : null,
            OwnerSupplied = x.Device.OwnerSupplied,
        }));
    }

    private static Control Stated(HouseLayout layout, ControlGroup group) => new()
    {
        Id = group.Id,
        Switches = [.. group.Switches.Select(s => layout.Devices[s].Id)],
        Loads = [.. group.Loads.Select(l => $"{layout.Devices[l.Device].Id}{(l.Part is LoadPart.Fan ? "#fan" : l.Part is LoadPart.Light ? "#light" : "")}")],
    };

    private static PinnedCircuit Circuit(JobEstimate estimate, Circuit circuit)
    {
        var (layout, wiring) = (estimate.Layout, estimate.Wiring);
        var panel = layout.Panels[circuit.Panel].Source.Id;
        string Name(int box) => wiring.Boxes[box].Id;
        return new PinnedCircuit
        {
            Id = circuit.Id,
            Panel = panel,
            BreakerA = Current.FromAmperes(circuit.BreakerA.Value),
            Wire = circuit.Wire,
            GroundFaultBy = circuit.Protection is Protection.GroundFault or Protection.DualFunction ? GroundFaultBy.Breaker
                : circuit.FirstReceptacleProtects || circuit.Boxes.Any(b => wiring.Boxes[b].OwnGroundFault) ? GroundFaultBy.FirstReceptacle : null,
            SharesNeutralWith = circuit.LeavesCommonHomeRun ? wiring.Circuits[circuit.SharesNeutralWith!.Value].Id : null,
            Outlets = [.. circuit.Boxes.Select(b => wiring.Boxes[b]).SelectMany(b => b.Equipment >= 0
                ? [layout.Equipment[b.Equipment].Source.Id]
                : b.Devices.Select(d => layout.Devices[d].Id))],
            Runs = [.. circuit.Runs.Select(r => wiring.Runs[r]).Select(r => new PinnedRun(r.From < 0 ? panel : Name(r.From), Name(r.To), r.Path.Way, r.Cable.Conductors))],
            TakesMore = true,
        };
    }

    // A point near a corner would be met on the other wall, so what hangs on a wall keeps its spot there.
    private static WallSpot? OnWall(HouseLayout layout, Placement place) => place is { Mount: Mount.Wall, Side: >= 0 }
        ? WallSpots.AsStated(layout.House.Rooms[place.Room], place.Side, place.Offset, layout.House.Pose)
        : null;

    private static GridPoint? Point(HouseLayout layout, Placement place) => OnWall(layout, place) is null ? Grid(layout, place.Spot) : null;

    private static GridPoint Grid(HouseLayout layout, PlanPoint spot) =>
        layout.House.Pose.ToGrid(spot) is var p ? new GridPoint(Length.FromSixteenths(p.X), Length.FromSixteenths(p.Y)) : default;
}
