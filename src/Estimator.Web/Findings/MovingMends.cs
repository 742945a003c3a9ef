using System.Text.Json;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.Web.Jobs;
using Estimator.Web.Panels;

namespace Estimator.Web.Findings;

/// <summary>Moves a device or a panel to the nearest place where its finding stands no more. Each place is tried by working the house out with it.</summary>
internal static class MovingMends
{
    private static readonly Length Step = Length.FromFeet(2);
    private static readonly Length FromCorner = Length.FromInches(6);

    // Where panels usually hang: common practice, no source.
    private static readonly RoomKind[] PanelRooms = [RoomKind.Utility, RoomKind.Garage, RoomKind.Basement, RoomKind.Laundry, RoomKind.Storage, RoomKind.Hall, RoomKind.Foyer, RoomKind.Family];

    /// <summary>Moves the device that a finding names; null where it names none that was placed or counted.</summary>
    internal static Mend? Device(Finding finding, Job job)
    {
        foreach (var room in RoomActs.All(job))
        {
            if (room.Placed.FirstOrDefault(p => finding.Where.Contains(p.Id)) is { } placed)
            {
                return new Mend("Move it", $"{placed.Id}: moved", j => Trial.First(j, finding, Spots(room, placed.Kind, placed.Wall).Select(s => Placed(j, room.Id, placed with { Wall = s.Wall, At = s.At }))));
            }

            if (room.Counts.FirstOrDefault(c => finding.Where.Any(w => w.StartsWith($"{room.Id}/{JsonNamingPolicy.SnakeCaseLower.ConvertName(c.Kind.ToString())}-", StringComparison.Ordinal))) is { } count)
            {
                var device = new PlacedDevice { Id = Guid.NewGuid().ToString("N")[..8], Kind = count.Kind, Serves = count.Serves };
                return new Mend("Move it", $"{RoomActs.Name(room)}: moved", j => Trial.First(j, finding, Spots(room, count.Kind, null).Select(s => Placed(Fewer(j, room.Id, count), room.Id, device with { Wall = s.Wall, At = s.At }))));
            }
        }

        return null;
    }

    /// <summary>Hangs the panel that a finding names elsewhere.</summary>
    internal static Mend? Panel(Finding finding, Job job) => job.Panels.FirstOrDefault(p => finding.Where.Contains(p.Id)) is { Existing: false } panel
        ? new Mend("Hang it where it may hang", $"{PanelActs.Name(panel)}: hung elsewhere", j => Trial.First(j, finding, Rooms(j, panel.Room).SelectMany(r => Spots(r, null, panel.Room == r.Id ? panel.Wall : null)
            .Select(s => PanelActs.With(j, panel.Id, p => p with { Room = r.Id, Wall = s.Wall, At = null })))))
        : null;

    private static IEnumerable<Room> Rooms(Job job, string first) => RoomActs.All(job).Where(r => r.Id == first || PanelRooms.Contains(r.Kind))
        .OrderBy(r => r.Id != first).ThenBy(r => Array.IndexOf(PanelRooms, r.Kind));

    private static IEnumerable<(WallSpot? Wall, GridPoint? At)> Spots(Room room, DeviceKind? kind, WallSpot? near) => kind is { } k && k.HangsFromCeiling()
        ? Ceiling(room).Select(p => ((WallSpot?)null, (GridPoint?)p))
        : Walls(room).OrderBy(w => near is null ? 0 : w.Side != near.Side ? 1 : 0).ThenBy(w => near is null ? Length.Zero : (w.Offset - near.Offset).Abs()).Select(w => ((WallSpot?)w, (GridPoint?)null));

    private static IEnumerable<WallSpot> Walls(Room room)
    {
        var sides = RoomSides.Of(room);
        for (var side = 0; side < sides.Length; side++)
        {
            for (var offset = FromCorner; offset < sides[side]; offset += Step)
            {
                yield return new WallSpot(side + 1, offset);
            }
        }
    }

    // Points of a grid over a rectangle that has a place; a polygon's are too many to be sure of.
    private static IEnumerable<GridPoint> Ceiling(Room room)
    {
        if (room is not { Size: { } size, At: { } at })
        {
            yield break;
        }

        for (var x = Step; x < size.Width; x += Step)
        {
            for (var y = Step; y < size.Depth; y += Step)
            {
                yield return new GridPoint(at.X + x, at.Y + y);
            }
        }
    }

    private static Job Placed(Job job, string room, PlacedDevice device) =>
        RoomActs.With(job, room, r => r with { Placed = r.Placed.Any(p => p.Id == device.Id) ? [.. r.Placed.Select(p => p.Id == device.Id ? device : p)] : r.Placed.Add(device) });

    private static Job Fewer(Job job, string room, DeviceCount count) =>
        RoomActs.With(job, room, r => r with { Counts = [.. r.Counts.Select(c => c.Kind == count.Kind && c.Serves == count.Serves ? c with { Count = c.Count - 1 } : c).Where(c => c.Count > 0)] });
}
