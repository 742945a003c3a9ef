using Estimator.Engine.Findings;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>Bedrooms and levels have their smoke and carbon monoxide alarms, away from baths and cooking.</summary>
/// <remarks>
/// Building code and not the NEC; the alarm outside each sleeping area is judged by level. An alarm whose place the program found is advised on. Source: IRC
/// R314, R315.
/// </remarks>
internal static class SmokeAlarms
{
    internal static IEnumerable<Finding> Judge(CheckContext context) =>
        Smoke(context).Concat(CarbonMonoxide(context)).Concat(NearBaths(context)).Concat(NearCooking(context)).Concat(Upgrade(context));

    private static IEnumerable<Finding> Smoke(CheckContext context)
    {
        if (context.Rule("smoke-alarm") is not { } rule)
        {
            yield break;
        }

        bool Has(int room) => context.In(room).Any(d => IsSmoke(d.Kind));
        foreach (var room in context.House.Rooms.Where(r => r.Source.Kind is RoomKind.Bedroom))
        {
            foreach (var finding in context.Ask(rule, Has(room.Index), () => $"{context.RoomName(room.Index)} is a bedroom without a smoke alarm. Add one.", [room.Source.Id]))
            {
                yield return finding;
            }
        }

        foreach (var level in context.House.Levels.Where(l => Lived(context, l)))
        {
            foreach (var finding in context.Ask(
                rule, level.Rooms.Any(r => context.House.Rooms[r].Source.Kind is not RoomKind.Bedroom && Has(r)),
                () => $"Level {level.Source.Called()} has no smoke alarm outside its bedrooms. Add one near them.", [level.Source.Id]))
            {
                yield return finding;
            }
        }
    }

    private static IEnumerable<Finding> CarbonMonoxide(CheckContext context)
    {
        if (context.Rule("co-alarm") is not { } rule || !Sources(context))
        {
            return [];
        }

        return context.House.Levels.Where(l => l.Rooms.Any(r => context.House.Rooms[r].Source.Kind is RoomKind.Bedroom)).SelectMany(level => context.Ask(
            rule, level.Rooms.Any(r => context.House.Rooms[r].Source.Kind is not RoomKind.Bedroom && context.In(r).Any(d => d.Kind is DeviceKind.CoAlarm or DeviceKind.SmokeCoAlarm)),
            () => $"Level {level.Source.Called()} has bedrooms and no carbon monoxide alarm outside them, and the dwelling burns fuel or opens to a garage. Add one near the bedrooms.", [level.Source.Id]));
    }

    private static bool Sources(CheckContext context) => context.Job.Equipment.Any(e => e.BurnsFuel)
        || context.House.Openings.Any(o => o.OtherRoom >= 0 && o.Source.Kind is not OpeningKind.Window && context.House.Rooms[o.Room].Source.Kind is RoomKind.Garage
            && context.House.Rooms[o.OtherRoom].Source.Kind is not RoomKind.Outdoors);

    private static IEnumerable<Finding> NearBaths(CheckContext context)
    {
        if (context.Rule("alarm-near-bath") is not { } rule)
        {
            return [];
        }

        var least = Length.FromInches(context.Limit(rule.Code, PlacingLimits.AlarmBath)).ToSixteenths();
        var baths = context.House.Rooms.Where(r => r.Source.Fixtures.Any(f => f.Kind is FixtureKind.Bathtub or FixtureKind.Shower)).Select(r => r.Index).ToHashSet();
        var doors = context.House.Openings.Where(o => baths.Contains(o.OtherRoom) && o.BreaksFloorLine).ToList();
        return context.Layout.Devices.Where(d => IsSmoke(d.Kind)).SelectMany(alarm => doors.Where(d => d.Room == alarm.Place.Room).SelectMany(door =>
        {
            var away = DoorSpots.Middle(context.House, door).StraightDistanceTo(alarm.Place.Spot);
            return context.Ask(
                rule, away >= least,
                () => $"{context.CalledAtStart(alarm)} hangs {Length.FromSixteenths(away)} from the door of {context.RoomName(door.OtherRoom)}; {Length.FromSixteenths(least)} is the least, unless nothing else would serve. Move it.",
                [alarm.Id, context.House.Rooms[alarm.Place.Room].Source.Id], Weight(alarm));
        }));
    }

    private static IEnumerable<Finding> NearCooking(CheckContext context)
    {
        if (context.Rule("alarm-near-cooking") is not { } rule)
        {
            return [];
        }

        var least = Length.FromFeet(context.Limit(rule.Code, PlacingLimits.AlarmCooking)).ToSixteenths();
        var cooking = context.Layout.Equipment.Where(e => e.Source.Kind is EquipmentKind.Range or EquipmentKind.Oven or EquipmentKind.Cooktop).ToList();
        return context.Layout.Devices.Where(d => IsSmoke(d.Kind)).SelectMany(alarm => cooking.Where(c => c.Place.Level == alarm.Place.Level).SelectMany(appliance =>
        {
            var away = appliance.Place.Spot.StraightDistanceTo(alarm.Place.Spot);
            return context.Ask(
                rule, away >= least,
                () => $"{context.CalledAtStart(alarm)} hangs {Length.FromSixteenths(away)} from {ServiceReceptacles.Named(appliance)}; {Length.FromSixteenths(least)} is the least for a photoelectric alarm and far more for an ionization one. Move it.",
                [alarm.Id, context.House.Rooms[alarm.Place.Room].Source.Id], Weight(alarm));
        }));
    }

    private static IEnumerable<Finding> Upgrade(CheckContext context)
    {
        if (context.Job.Panels.FirstOrDefault(p => p.FedFrom is null) is not { Existing: true } service || context.Rule("alarm-upgrade") is not { } rule)
        {
            return [];
        }

        return [context.Asked(
            rule, $"The dwelling is there already. Work under a permit brings the smoke alarms of all of it up to those of a new one; some places exempt electrical work. Ask the building department, and add the rooms outside this job.", [service.Id], Severity.Advice)];
    }

    private static bool Lived(CheckContext context, FramedLevel level) => level.Rooms.Any(r => context.House.Rooms[r].Source.Kind
        is not (RoomKind.Attic or RoomKind.Crawl or RoomKind.Garage or RoomKind.Outdoors or RoomKind.Void));

    private static Severity Weight(LaidDevice alarm) => alarm.Place.Assumed ? Severity.Advice : Severity.Mandatory;

    private static bool IsSmoke(DeviceKind kind) => kind is DeviceKind.SmokeAlarm or DeviceKind.SmokeCoAlarm;
}
