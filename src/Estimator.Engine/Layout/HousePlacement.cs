using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Layout;

/// <summary>Finds a place for every device, piece of equipment and panel.</summary>
public static class HousePlacement
{
    /// <summary>Number of the page of the explanation book that holds the facts of this stage.</summary>
    public const int PageNumber = 1;

    private const int MostSpots = 8;

    /// <summary>The layout of a house.</summary>
    public static HouseLayout Place(FramedHouse house)
    {
        var page = new PageWriter(PageNumber);
        var placing = new Placing(house, page);
        var devices = house.Rooms.SelectMany(r => Devices(house, r, placing)).ToImmutableArray();
        return new HouseLayout
        {
            House = house,
            Devices = devices,
            Equipment = [.. EquipmentPlacing.Place(house, placing)],
            Panels = [.. house.Job.Panels.Select((p, i) => new LaidPanel(p, Panel(house, p, i, placing)))],
            Findings = [.. house.Findings, .. OffTheirMount(house)],
            Page = page.ToPage(),
        };
    }

    private static IEnumerable<LaidDevice> Devices(FramedHouse house, FramedRoom room, Placing placing)
    {
        var path = RoomPath(house.Job, room.Source);
        var stated = room.Source.Placed.Select((p, i) => new LaidDevice(p.Id, p.Kind, p.Serves, Stated(house, room, p, $"{path}.placed[{i}]", placing), p.OwnerSupplied));
        var counting = new CountPlacing(placing);
        var counted = room.Source.Counts.Where(c => c.Count > 0).GroupBy(c => (c.Kind, c.Serves)).OrderBy(g => g.Key)
            .SelectMany(g => counting.Places(room.Index, g.Key.Kind, g.Key.Serves, g.Sum(c => c.Count))
                .Zip(CountedIds.Of(room.Source, g.Key.Kind, g.Key.Serves, g.Sum(c => c.Count)), (p, id) => new LaidDevice(id, g.Key.Kind, g.Key.Serves, p, OwnerSupplied: false)));
        return stated.OrderBy(d => d.Kind).ThenBy(d => d.Serves).ThenBy(d => d.Place.Spot).ThenBy(d => d.Place.Height).ThenBy(d => d.Id, StringComparer.Ordinal).Concat(counted);
    }

    private static Placement Stated(FramedHouse house, FramedRoom room, PlacedDevice device, string path, Placing placing)
    {
        if (device.Wall is { } wall)
        {
            var (side, offset) = WallSpots.Of(room, wall, house.Pose);
            return device.Kind.HangsFromCeilingAlone()
                ? placing.OnCeilingAtWall(room.Index, side, offset)
                : placing.OnWall(room.Index, side, offset, Height(house, room, device, path, placing), assumed: false);
        }

        Fact? height = device.Kind.HangsFromCeiling() ? null : Height(house, room, device, path, placing);
        if (device.At is not { } at)
        {
            return placing.Inside(room.Index, RoomPoints.Middle(room), height, assumed: true);
        }

        return height is { } above && device.Serves is not ServedPlace.Island
            ? placing.NearestWall(room.Index, at, above)
            : placing.Free(room.Index, at, path, height);
    }

    private static Fact Height(FramedHouse house, FramedRoom room, PlacedDevice device, string path, Placing placing) => device.Height is { } own
        ? placing.Page.Given($"{path}.height", "Box centre above the floor", own)
        : MountingHeights.Of(house.Job, room, device.Kind, device.Serves, placing.Page);

    // A light or fan that can only hang from the ceiling is taken to hang there above the spot, and that is said.
    private static IEnumerable<Finding> OffTheirMount(FramedHouse house) =>
        from room in house.Rooms
        from placed in room.Source.Placed
        where placed.Wall is not null && placed.Kind.HangsFromCeilingAlone()
        select new Finding
        {
            Code = "ceiling-device-on-wall",
            Severity = Severity.Advice,
            Where = [placed.Id, room.Source.Id],
            Text = $"{placed.Id} is a {Words.Snake(placed.Kind).Replace('_', ' ')} and was put on a wall of {room.Source.Called()}; it was taken to hang from the ceiling above that spot. Give it a point, or make it a wall light.",
        };

    private static Placement Panel(FramedHouse house, Panel panel, int index, Placing placing)
    {
        var room = house.Rooms.FirstOrDefault(r => r.Source.Id == panel.Room) ?? house.Rooms[0];
        var height = MountingHeights.Within(room, PracticeDefaults.PanelHeight.ReadInches(placing.Page), placing.Page);
        if (panel.Wall is { } wall)
        {
            var (side, offset) = WallSpots.Of(room, wall, house.Pose);
            return placing.OnWall(room.Index, side, offset, height, assumed: false);
        }

        return panel.At is { } at
            ? placing.NearestWall(room.Index, at, height)
            : placing.Along(room.Index, ClearSpot(house, room), height, assumed: true);
    }

    // The middle of the longest wall space, or the first of ever more spots along the walls that leaves room to work.
    private static int ClearSpot(FramedHouse house, FramedRoom room)
    {
        var depth = PlacingLimits.WorkingDepth.Inches();
        var middle = ReceptacleSpread.AlongWalls(house, room.Index, 1)[0];
        return Enumerable.Range(1, MostSpots).SelectMany(n => ReceptacleSpread.AlongWalls(house, room.Index, n))
            .Where(a => WallSpaces.SpotAt(room, a) is var (side, offset) && WorkingSpace.Clear(house, room.Index, side, offset, depth)).Select(a => (int?)a).FirstOrDefault() ?? middle;
    }

    internal static string RoomPath(Job job, Room room)
    {
        var level = job.Levels.Select((l, i) => (l, i)).First(x => x.l.Rooms.Contains(room));
        return $"$.levels[{level.i}].rooms[{level.l.Rooms.IndexOf(room)}]";
    }
}
