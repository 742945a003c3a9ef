using Estimator.Engine.Controls;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Joints;

namespace Estimator.Engine.Checks;

/// <summary>Switches are within reach, and those that control lights have a neutral in their box.</summary>
/// <remarks>
/// One neutral is enough where all switches of a control stand in one room. A control of receptacles alone, or by a sensor, asks for none. Source: NEC
/// 404.2(C), 404.8(A).
/// </remarks>
internal static class SwitchPlaces
{
    internal static IEnumerable<Finding> Judge(CheckContext context) => Heights(context).Concat(Neutrals(context));

    private static IEnumerable<Finding> Heights(CheckContext context)
    {
        if (context.Rule("switch-height") is not { } rule)
        {
            return [];
        }

        var highest = Length.FromInches(context.Limit(rule.Code, PlacingLimits.SwitchHighest)).ToSixteenths();
        return context.Layout.Devices.Where(d => d.Kind.IsSwitch()).SelectMany(d => context.Ask(
            rule, d.Place.Height <= highest,
            () => $"{context.CalledAtStart(d)} stands {Length.FromSixteenths(d.Place.Height)} above the floor; {Length.FromSixteenths(highest)} is the most for the middle of its handle. Put it lower.",
            [d.Id, context.House.Rooms[d.Place.Room].Source.Id]));
    }

    private static IEnumerable<Finding> Neutrals(CheckContext context)
    {
        if (context.Rule("switch-neutral") is not { } rule)
        {
            return [];
        }

        return context.Controls.Groups.Where(g => Lights(context, g)).SelectMany(g =>
        {
            var bare = g.Switches.Where(s => !HasNeutral(context, s)).ToList();
            var together = g.Switches.Select(s => context.Layout.Devices[s].Place.Room).Distinct().Count() == 1;
            return context.Ask(
                rule, bare.Count == 0 || (together && bare.Count < g.Switches.Length),
                () => $"No neutral reaches the box of {string.Join(", ", bare.Select(s => context.Called(context.Layout.Devices[s])))}. Feed the control at its switch, or run a cable with one more conductor.",
                [.. bare.Select(s => context.Layout.Devices[s].Id)]);
        });
    }

    private static bool Lights(CheckContext context, ControlGroup group) => !group.Switches.IsEmpty
        && group.Switches.All(s => context.Layout.Devices[s].Kind is not DeviceKind.SensorSwitch)
        && group.Loads.Any(l => context.Layout.Devices[l.Device] is var d && SwitchNeutrals.AskedFor(d.Kind, context.House.Rooms[d.Place.Room].Source.Kind));

    private static bool HasNeutral(CheckContext context, int device) =>
        context.BoxOf(device) is { } box && box.Joints.Any(j => j.Function is ConductorFunction.Neutral && !j.Ends.IsEmpty);
}
