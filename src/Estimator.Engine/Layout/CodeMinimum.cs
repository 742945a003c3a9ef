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
        var outdoors = FrontAndBack.Rooms(house);
        var stairs = house.Rooms.Where(r => r.Source.Kind is RoomKind.Stair && IsEmpty(r.Source)).Select(r => (Lower: r, Upper: StairAbove.Of(house, r)))
            .Where(s => s.Upper is { } upper && IsEmpty(house.Rooms[upper].Source)).Select(s => (s.Lower, Upper: house.Rooms[s.Upper!.Value])).DistinctBy(s => s.Upper.Index).ToList();
        var levels = job.Levels.Select(l => l with { Rooms = [.. l.Rooms.Select(r => Propose(house, byId[r.Id], outdoors, stairs))] }).ToImmutableArray();
        return job with
        {
            Levels = levels,
            Controls = [.. job.Controls, .. stairs.Select(s => StairControl(levels.SelectMany(l => l.Rooms), s.Lower, s.Upper, job, top: stairs.All(o => o.Lower != s.Upper)))],
            Proposals = [.. job.Proposals, $"Devices were suggested: the least that NEC {(int)job.Code.Edition} asks for, placed by rule. Check them against the walk-through."],
        };
    }

    private static Room Propose(FramedHouse house, FramedRoom framed, ImmutableArray<int> outdoors, List<(FramedRoom Lower, FramedRoom Upper)> stairs)
    {
        var room = framed.Source;
        if (!IsEmpty(room))
        {
            return room;
        }

        var joins = stairs.Count(s => s.Upper.Index == framed.Index);
        var receptacles = Receptacles(house, framed).ToList();
        var counts = receptacles.Concat(Service(house, framed, receptacles)).Concat(Lights(house, framed, stairs.Any(s => s.Lower.Index == framed.Index), joins > 0))
            .Append(Count(DeviceKind.ThreeWaySwitch, joins)).Concat(Alarms(house, framed))
            .Append(Count(DeviceKind.DuplexReceptacle, outdoors.Count(r => r == framed.Index), ServedPlace.Outdoors))
            .GroupBy(c => (c.Kind, c.Serves)).Select(g => g.First() with { Count = g.Sum(c => c.Count) });
        return room with { Counts = [.. counts.Where(c => c.Count > 0).Select(c => c with { Count = Math.Min(c.Count, JobFiles.JobLimits.Count) })] };
    }

    private static bool IsEmpty(Room room) => room.Counts.IsEmpty && room.Placed.IsEmpty && room.Kind is not RoomKind.Void;

    // The light of a stair is switched at its foot and on the level above: by the first switch of the stair, and by the last of the room above, added for it.
    // Where the stair ends there, the light over its end goes along.
    private static Control StairControl(IEnumerable<Room> rooms, FramedRoom lower, FramedRoom upper, Job job, bool top)
    {
        var last = rooms.First(r => r.Id == upper.Source.Id).Counts.Where(c => c is { Kind: DeviceKind.ThreeWaySwitch, Serves: ServedPlace.Room }).Sum(c => c.Count);
        var id = $"{lower.Source.Id}-stair";
        return new Control
        {
            Id = job.Controls.Any(c => c.Id == id) ? $"{id}-proposed" : id,
            Switches = [$"{lower.Source.Id}/three_way_switch-1", $"{upper.Source.Id}/three_way_switch-{last}"],
            Loads = [$"{lower.Source.Id}/ceiling_light-1", .. top && upper.Source.Kind is RoomKind.Stair ? [$"{upper.Source.Id}/ceiling_light-1"] : Array.Empty<string>()],
        };
    }

    // Heating and cooling equipment asks for a receptacle near it, from 2020 with ground-fault protection.
    private static IEnumerable<DeviceCount> Service(FramedHouse house, FramedRoom framed, List<DeviceCount> receptacles)
    {
        if (!house.Job.Equipment.Any(e => e.Room == framed.Source.Id && !e.Existing && e.Kind is EquipmentKind.Furnace or EquipmentKind.AirConditioner or EquipmentKind.HeatPump && e.Room == framed.Source.Id))
        {
            yield break;
        }

        var place = new OutletPlace { Room = framed.Source.Kind, Finished = framed.Source.Finished, InBasement = house.Levels[framed.Level].Source.Basement };
        var protectedThere = ProtectionRules.GroundFault(house.Job.Code, place).Required;
        if (receptacles.Sum(c => c.Count) == 0 || !protectedThere)
        {
            yield return Count(house.Job.Code.Edition is CodeEdition.Nec2017 ? DeviceKind.DuplexReceptacle : DeviceKind.GfciReceptacle, 1);
        }
    }

    private static IEnumerable<DeviceCount> Receptacles(FramedHouse house, FramedRoom framed)
    {
        var room = framed.Source;
        // The firm's own spacing, or that of a local rule where it is tighter.
        var local = Length.FromInches(LocalRules.Figure(house.Job.Code, "receptacle-spacing", ReceptacleRules.WallBetween.Number()));
        var spacing = house.Job.Practice.ReceptacleSpacing is { } own ? Length.Min(own, local) : local;
        var walls = WallSpaces.Of(house, framed.Index).Sum(s => ReceptacleCounts.WallSpace(Length.FromSixteenths(s.Length), spacing));
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
            case RoomKind.Storage or RoomKind.Utility or RoomKind.Other when AccessoryBuildings.Holds(house.Job, room):
                yield return Count(DeviceKind.DuplexReceptacle, (int)ReceptacleRules.AccessoryBuilding.Number());
                break;
            case RoomKind.Utility when !room.Finished && house.Levels[framed.Level].Source.Basement:
                yield return Count(DeviceKind.DuplexReceptacle, (int)ReceptacleRules.BasementPortion.Number());
                break;
            case RoomKind.Outdoors when OutsideDoors.Reached(house, framed.Index) || (house.Job.Code.Edition is not CodeEdition.Nec2017 && OutsideWalls.Touches(house, framed.Index)):
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

    private static IEnumerable<DeviceCount> Lights(FramedHouse house, FramedRoom framed, bool joinsAbove, bool joinsBelow)
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
                yield return Count(DeviceKind.ThreeWaySwitch, joinsAbove ? 1 : joinsBelow ? 0 : 2);
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

    private static DeviceCount Count(DeviceKind kind, int count, ServedPlace serves = ServedPlace.Room) => new() { Kind = kind, Count = count, Serves = serves };
}
