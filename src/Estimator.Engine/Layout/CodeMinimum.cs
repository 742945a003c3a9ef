using System.Collections.Immutable;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Layout;

/// <summary>Proposes the devices that the edition asks for at least, in every room that has none.</summary>
/// <remarks>
/// Receptacles by 210.52, switched lighting outlets by 210.70, alarms by IRC R314 and R315. A proposal is a start: the user adds, moves and removes,
/// and the checks follow. Source: the receptacle table; switches and lights beyond the rule are common practice, no source.
/// </remarks>
public static class CodeMinimum
{
    /// <summary>The job with proposed counts, and a sentence that says so.</summary>
    public static Job Propose(Job job)
    {
        var house = HouseFraming.Frame(job);
        var byId = house.Rooms.ToDictionary(r => r.Source.Id, StringComparer.Ordinal);
        var outdoors = OutdoorRooms(house);
        var levels = job.Levels.Select(l => l with { Rooms = [.. l.Rooms.Select(r => Propose(house, byId[r.Id], outdoors))] }).ToImmutableArray();
        return job with
        {
            Levels = levels,
            Proposals = [.. job.Proposals, $"Devices were suggested: the least that NEC {(int)job.Code.Edition} asks for, placed by rule. Check them against the walk-through."],
        };
    }

    private static Room Propose(FramedHouse house, FramedRoom framed, HashSet<int> outdoors)
    {
        var room = framed.Source;
        if (!room.Counts.IsEmpty || !room.Placed.IsEmpty || room.Kind is RoomKind.Void)
        {
            return room;
        }

        var counts = Receptacles(house, framed).Concat(Lights(house, framed)).Concat(Alarms(house, framed));
        if (outdoors.Contains(framed.Index))
        {
            counts = counts.Append(Count(DeviceKind.DuplexReceptacle, 1, ServedPlace.Outdoors));
        }

        return room with { Counts = [.. counts.Where(c => c.Count > 0).Select(c => c with { Count = Math.Min(c.Count, JobFiles.JobLimits.Count) })] };
    }

    private static IEnumerable<DeviceCount> Receptacles(FramedHouse house, FramedRoom framed)
    {
        var room = framed.Source;
        var walls = WallSpaces.Of(house, framed.Index).Sum(s => ReceptacleCounts.WallSpace(Length.FromSixteenths(s.Length), house.Job.Practice.ReceptacleSpacing));
        switch (room.Kind)
        {
            case RoomKind.Kitchen:
                yield return Count(DeviceKind.DuplexReceptacle, walls);
                yield return Count(DeviceKind.DuplexReceptacle, CounterCount(house, framed), ServedPlace.Counter);
                yield return Count(DeviceKind.DuplexReceptacle, room.Counters.Where(c => c.Kind is not CounterKind.Wall).Sum(c => ReceptacleCounts.Island(house.Job.Code.Edition, c.Length, c.Depth)), ServedPlace.Island);
                break;
            case RoomKind.Bathroom:
                yield return Count(DeviceKind.DuplexReceptacle, Math.Max(1, room.Fixtures.Count(f => f.Kind is FixtureKind.Sink)), ServedPlace.Basin);
                break;
            case RoomKind.Hall:
                yield return Count(DeviceKind.DuplexReceptacle, ReceptacleCounts.Hallway(HallLength.Of(framed)));
                break;
            case RoomKind.Foyer:
                yield return Count(DeviceKind.DuplexReceptacle, ReceptacleCounts.Foyer(house, framed));
                break;
            case RoomKind.Laundry:
                yield return Count(DeviceKind.DuplexReceptacle, (int)ReceptacleRules.Laundry.Number());
                break;
            case RoomKind.Garage:
                yield return Count(DeviceKind.DuplexReceptacle, VehicleBays.Of(house, framed.Index) * (int)ReceptacleRules.GarageBay.Number());
                break;
            case RoomKind.Utility when !room.Finished && house.Levels[framed.Level].Source.Basement:
                yield return Count(DeviceKind.DuplexReceptacle, (int)ReceptacleRules.BasementPortion.Number());
                break;
            case RoomKind.Outdoors when OutsideDoors.Reached(house, framed.Index):
                yield return Count(DeviceKind.DuplexReceptacle, (int)ReceptacleRules.Deck.Number());
                break;
            case RoomKind.Basement:
                yield return Count(DeviceKind.DuplexReceptacle, room.Finished ? walls : (int)ReceptacleRules.BasementPortion.Number());
                break;
            case RoomKind.Living or RoomKind.Dining or RoomKind.Family or RoomKind.Bedroom or RoomKind.Office or RoomKind.Habitable or RoomKind.Sunroom:
                yield return Count(DeviceKind.DuplexReceptacle, walls);
                break;
            default:
                break;
        }
    }

    private static int CounterCount(FramedHouse house, FramedRoom framed)
    {
        var stated = framed.Source.Counters.Where(c => c.Kind is CounterKind.Wall).ToList();
        return stated.Count > 0
            ? stated.Sum(c => ReceptacleCounts.Counter(c.Length))
            : ReceptacleCounts.Counter(Length.FromSixteenths((long)(Polygons.Perimeter(framed.Corners) * ReceptacleRules.CounterShare.Number() / 100m)));
    }

    private static IEnumerable<DeviceCount> Lights(FramedHouse house, FramedRoom framed)
    {
        var farDoors = DoorSpots.Doors(house, framed.Index).Length > 1 && framed.Source.Kind is RoomKind.Hall or RoomKind.Stair or RoomKind.Garage;
        if (OutsideDoors.AtGrade(house, framed.Level) && OutsideDoors.Of(house, framed.Index) is { IsEmpty: false } outside)
        {
            yield return Count(DeviceKind.WallLight, outside.Length, ServedPlace.Outdoors);
            yield return Count(DeviceKind.SinglePoleSwitch, 1);
        }

        switch (framed.Source.Kind)
        {
            case RoomKind.Bathroom:
                yield return Count(DeviceKind.WallLight, 1, ServedPlace.Basin);
                yield return Count(DeviceKind.ExhaustFan, 1);
                yield return Count(DeviceKind.SinglePoleSwitch, 2);
                break;
            case RoomKind.Stair:
                yield return Count(DeviceKind.CeilingLight, 1);
                yield return Count(DeviceKind.ThreeWaySwitch, 2);
                break;
            case RoomKind.Closet or RoomKind.Outdoors:
                break;
            default:
                yield return Count(DeviceKind.CeilingLight, 1);
                yield return farDoors ? Count(DeviceKind.ThreeWaySwitch, 2) : Count(DeviceKind.SinglePoleSwitch, 1);
                break;
        }
    }

    private static IEnumerable<DeviceCount> Alarms(FramedHouse house, FramedRoom framed)
    {
        if (framed.Source.Kind is RoomKind.Bedroom or RoomKind.Habitable)
        {
            yield return Count(DeviceKind.SmokeAlarm, 1);
        }

        if (AlarmRoom(house, framed.Level) == framed.Index)
        {
            var carbonMonoxide = house.Rooms.Any(r => r.Source.Kind is RoomKind.Garage) || house.Job.Equipment.Any(e => e.BurnsFuel);
            yield return Count(carbonMonoxide ? DeviceKind.SmokeCoAlarm : DeviceKind.SmokeAlarm, 1);
        }
    }

    // The alarm of a level outside its bedrooms hangs in its hall, else in the first room that people pass.
    private static int AlarmRoom(FramedHouse house, int level) => house.Rooms
        .Where(r => r.Level == level && r.Source.Kind is not (RoomKind.Bedroom or RoomKind.Habitable or RoomKind.Bathroom or RoomKind.Garage or RoomKind.Outdoors or RoomKind.Void
            or RoomKind.Attic or RoomKind.Crawl or RoomKind.Closet))
        .OrderBy(r => r.Source.Kind switch { RoomKind.Hall => 0, RoomKind.Foyer => 1, RoomKind.Stair => 2, RoomKind.Living or RoomKind.Family => 3, _ => 4 })
        .ThenBy(r => r.Index).Select(r => r.Index).DefaultIfEmpty(-1).First();

    // Front and back of a house: the first two rooms with a door to the outside.
    private static HashSet<int> OutdoorRooms(FramedHouse house) => [.. house.Openings
        .Select(o => o.Room).Distinct().Where(r => !OutsideDoors.Of(house, r).IsEmpty).Order().Take((int)ReceptacleRules.Outdoor.Number())];

    private static DeviceCount Count(DeviceKind kind, int count, ServedPlace serves = ServedPlace.Room) => new() { Kind = kind, Count = count, Serves = serves };
}
