using Estimator.Engine.Findings;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;

namespace Estimator.Engine.Checks;

/// <summary>Stair lights are controlled at each floor that the stair joins, and dimmed everywhere or nowhere.</summary>
/// <remarks>
/// A stair joins its level to the next where a stair, hall, foyer or void lies over its middle; it is taken to have six risers or more. Source: NEC
/// 210.70(A)(2)(3) and (4).
/// </remarks>
internal static class StairControls
{
    internal static IEnumerable<Finding> Judge(CheckContext context) =>
        context.House.Rooms.Where(r => r.Source.Kind is RoomKind.Stair).SelectMany(r => Levels(context, r).Concat(Dimmers(context, r)));

    private static IEnumerable<Finding> Levels(CheckContext context, FramedRoom stair)
    {
        var groups = Lighting(context, stair);
        if (groups.Count == 0 || StairAbove.Of(context.House, stair) is not { } above || context.Rule("stair-control") is not { } rule)
        {
            return [];
        }

        var lower = stair.Level;
        bool At(int level) => groups.Any(g => g.Switches.Any(s => context.Layout.Devices[s].Place.Level == level));
        var (first, second) = (context.House.Levels[lower].Source.Called(), context.House.Levels[lower + 1].Source.Called());
        var missing = At(lower) ? second : first;
        return context.Ask(
            rule, At(lower) && At(lower + 1),
            () => $"The light of {context.RoomName(stair.Index)} has no switch on {missing}; a control is asked for at each floor that the stair joins, {first} and {second}. Put a three-way switch there.",
            [stair.Source.Id, context.House.Rooms[above].Source.Id]);
    }

    private static IEnumerable<Finding> Dimmers(CheckContext context, FramedRoom stair)
    {
        if (context.Rule("stair-dimmer") is not { } rule)
        {
            return [];
        }

        return Lighting(context, stair).SelectMany(g =>
        {
            var dimmers = g.Switches.Where(s => context.Layout.Devices[s].Kind is DeviceKind.Dimmer).ToList();
            return context.Ask(
                rule, dimmers.Count == 0 || dimmers.Count == g.Switches.Length,
                () => $"The light of {context.RoomName(stair.Index)} has a dimmer at one control and none at another; a stair is dimmed from every control or from none. Make it a three-way switch.",
                [.. dimmers.Select(d => context.Layout.Devices[d].Id), stair.Source.Id]);
        });
    }

    private static List<Controls.ControlGroup> Lighting(CheckContext context, FramedRoom stair) => [.. context.Controls.Groups.Where(g => !g.Switches.IsEmpty
        && g.Loads.Any(l => context.Layout.Devices[l.Device] is var d && d.Place.Room == stair.Index && d.Kind.IsLuminaireOrFan()))];
}
