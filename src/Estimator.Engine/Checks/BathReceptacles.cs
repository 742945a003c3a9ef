using Estimator.Engine.Findings;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>Each basin has a receptacle within reach, and none stands in the zone of a tub or shower.</summary>
/// <remarks>
/// Basins and tubs are points; their edges are taken at the usual sizes, and what that leaves open is said to be open. Source: NEC 210.52(D), 406.9(C).
/// </remarks>
internal static class BathReceptacles
{
    internal static IEnumerable<Finding> Judge(CheckContext context) =>
        context.House.Rooms.SelectMany(r => Basins(context, r).Concat(Zones(context, r)).Concat(Switches(context, r)));

    private static IEnumerable<Finding> Basins(CheckContext context, FramedRoom room)
    {
        var receptacles = context.In(room.Index).Where(IsOne).ToList();
        if (room.Source.Kind is not RoomKind.Bathroom || receptacles.Count == 0 || context.Rule("bath-receptacle") is not { } rule)
        {
            return [];
        }

        var most = Length.FromInches(context.Limit(rule.Code, ReceptacleRules.BasinReach) + PlacingLimits.BasinHalf.Number()).ToSixteenths();
        return TubZone.Basins(context.House, room.Index).SelectMany(basin =>
        {
            var nearest = receptacles.Min(r => r.Place.Spot.StraightDistanceTo(basin));
            return context.Ask(
                rule, nearest <= most,
                () => $"{context.RoomName(room.Index)}: the nearest receptacle is {Length.FromSixteenths(nearest)} from the middle of a basin; {Length.FromSixteenths(most)} is the most, {Length.FromInches(context.Limit(rule.Code, ReceptacleRules.BasinReach))} from its edge. Add a receptacle beside it.",
                [room.Source.Id]);
        });
    }

    private static IEnumerable<Finding> Zones(CheckContext context, FramedRoom room)
    {
        if (TubZone.Of(context.House, room.Index).IsEmpty || context.Rule("tub-zone") is not { } rule)
        {
            yield break;
        }

        var reach = context.Edition is CodeEdition.Nec2017 ? 0 : Length.FromInches(context.Limit(rule.Code, PlacingLimits.TubReach)).ToSixteenths();
        // 2020 names the zone from the rim up alone.
        var (from, to) = (context.Edition is CodeEdition.Nec2020 ? PlacingLimits.TubRim.Inches().ToSixteenths() : 0, (PlacingLimits.TubRim.Inches() + PlacingLimits.TubZoneHeight.Inches()).ToSixteenths());
        foreach (var device in context.In(room.Index).Where(IsOne).Where(d => d.Place.Height >= from && d.Place.Height < to))
        {
            context.Applies(rule);
            var within = TubZone.Within(context.House, room.Index, device.Place.Spot, reach);
            if (within is true && MayStandFarthest(context, room, device, reach))
            {
                yield return context.Asked(
                    rule, $"{context.RoomName(room.Index)}: no wall near the basin lies {Length.FromSixteenths(reach)} from the tub or shower, so {context.Called(device)} may stand within that zone, on the wall that is farthest from it.", [device.Id, room.Source.Id], Severity.Advice);
            }
            else if (within is not false)
            {
                yield return context.Asked(
                    rule, Said(context, room, device, reach, within is true), [device.Id, room.Source.Id], within is true ? Severity.Mandatory : Severity.Unjudged);
            }
        }
    }

    private static FormattableString Said(CheckContext context, FramedRoom room, LaidDevice device, int reach, bool sure) => (sure, reach) switch
    {
        (true, 0) => $"{context.CalledAtStart(device)} stands within or over the tub or shower. Move it.",
        (true, _) => $"{context.CalledAtStart(device)} stands less than {Length.FromSixteenths(reach)} from the edge of the tub or shower. Move it out of that zone.",
        (_, 0) => $"{context.CalledAtStart(device)} may stand over the tub or shower, of which only the middle is known. Look at the plan.",
        _ => $"{context.CalledAtStart(device)} may stand less than {Length.FromSixteenths(reach)} from the edge of the tub or shower, of which only the middle is known. Measure it.",
    };

    // From 2023 the required one may stand on the farthest wall of a bathroom that leaves no spot outside the zone from which the basin is in reach.
    private static bool MayStandFarthest(CheckContext context, FramedRoom room, LaidDevice device, int reach) =>
        context.Year >= (int)CodeEdition.Nec2023 && device.Serves is ServedPlace.Basin
        && TubZone.Basins(context.House, room.Index) is { IsEmpty: false } basins
        && basins.SelectMany(b => TubZone.Near(context.House, room.Index, b)).All(s => TubZone.Within(context.House, room.Index, WallSpots.PointAt(room, s.Side, s.Offset), reach) is true);

    private static IEnumerable<Finding> Switches(CheckContext context, FramedRoom room)
    {
        if (TubZone.Of(context.House, room.Index).IsEmpty || context.Rule("switch-at-tub") is not { } rule)
        {
            return [];
        }

        return context.In(room.Index).Where(d => d.Kind.IsSwitch()).SelectMany(d => context.Ask(
            rule, TubZone.Within(context.House, room.Index, d.Place.Spot, 0) is not true,
            () => $"{context.CalledAtStart(d)} stands within or over the tub or shower. Move it.", [d.Id, room.Source.Id]));
    }

    private static bool IsOne(LaidDevice device) => device.Kind.IsReceptacle() && device.Kind is not DeviceKind.Receptacle240V && device.Serves is not ServedPlace.Outdoors;
}
