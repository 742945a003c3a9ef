using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>Buildings that stand apart: how they are supplied, cut off and grounded, and what they have.</summary>
/// <remarks>
/// Trench, disconnect and electrodes are counted by the takeoff, so their rules apply and are held. Source: NEC 210.52(G), 225.30, 225.31, 225.39, 225.41,
/// 250.32(A), 300.5.
/// </remarks>
internal static class BuildingsApart
{
    internal static IEnumerable<Finding> Judge(CheckContext context) => context.Job.Buildings.SelectMany(b => Of(context, b));

    private static IEnumerable<Finding> Of(CheckContext context, Building building)
    {
        // A multiwire circuit counts as one, 225.30.
        var circuits = context.Wiring.Circuits.Where(c => c.BreakerPoles > 0).Where(c => Stands(context, building, context.Layout.Panels[c.Panel].Place.Room) ^ c.Boxes.Any(b => Stands(context, building, context.Boxes[b].Place.Room))).ToList();
        var feeders = context.Wiring.Feeders.Where(f => Stands(context, building, PanelOf(context, f.From)) ^ Stands(context, building, PanelOf(context, f.To))).ToList();
        if (circuits.Count + feeders.Count == 0)
        {
            yield break;
        }

        foreach (var key in new[] { "burial-cover", "building-disconnect" }.Concat(feeders.Count > 0 ? ["building-electrode"] : Array.Empty<string>()))
        {
            if (context.Rule(key) is { } counted)
            {
                context.Applies(counted);
            }
        }

        foreach (var finding in Supplies(context, building, circuits.Count, feeders.Count).Concat(Rating(context, building)).Concat(Receptacle(context, building)).Concat(SecondDwelling(context, building, feeders.Count)))
        {
            yield return finding;
        }
    }

    private static IEnumerable<Finding> Supplies(CheckContext context, Building building, int circuits, int feeders) => context.Rule("building-supply") is { } rule
        ? context.Ask(
            rule, circuits + feeders <= BurialRules.Supplies.Number(),
            () => $"{building.Called()} is supplied by {Count(circuits, "branch circuit")} and {Count(feeders, "feeder")}; one supply is allowed. Hang a panel in it, fed from the house, or keep it to one circuit.", [building.Id])
        : [];

    private static IEnumerable<Finding> Rating(CheckContext context, Building building)
    {
        foreach (var (panel, p) in context.Layout.Panels.Select((x, i) => (x, i)).Where(x => x.x.Source is { FedFrom: not null, Existing: false } && Stands(context, building, x.x.Place.Room)))
        {
            var circuits = context.Wiring.Circuits.Count(c => c.Panel == p) + panel.Source.Circuits.Length;
            var least = BurialRules.PanelLeast(circuits).Number();
            if (context.Rule("building-rating") is { } rule)
            {
                var (rating, name) = (panel.Source.RatingA.ToAmperes(), panel.Source.Called());
                foreach (var finding in context.Ask(rule, rating >= least, () => $"Panel {name} cuts off {building.Called()} with {circuits} circuits and is rated {rating:0} A; {least:0} A is the least. Take a larger one.", [panel.Source.Id, building.Id]))
                {
                    yield return finding;
                }
            }
        }
    }

    // A detached garage is asked for a receptacle at each car, like any garage.
    private static IEnumerable<Finding> Receptacle(CheckContext context, Building building)
    {
        var rooms = context.House.Rooms.Where(r => r.Source.Building == building.Id && r.Source.Kind is not (RoomKind.Outdoors or RoomKind.Void)).ToList();
        return context.Rule("required-accessory") is { } rule && AccessoryBuildings.Is(context.Job, building)
            ? context.Ask(
                rule, rooms.Exists(r => r.Source.Kind is RoomKind.Garage || context.In(r.Index).Any(d => d.Kind.IsReceptacle() && d.Kind is not DeviceKind.Receptacle240V)),
                () => $"{building.Called()} has electric power and no receptacle. Add one.", [building.Id, .. rooms.Take(1).Select(r => r.Source.Id)])
            : [];
    }

    private static IEnumerable<Finding> SecondDwelling(CheckContext context, Building building, int feeders) =>
        feeders > 0 && !AccessoryBuildings.Is(context.Job, building) && context.Rule("second-dwelling-disconnect") is { } rule
            ? context.Ask(
                rule, building.DisconnectOutdoors,
                () => $"{building.Called()} is a dwelling on a feeder: a disconnect on its outside, marked for emergencies, is asked for. State it; it is then counted.", [building.Id])
            : [];

    private static bool Stands(CheckContext context, Building building, int room) => context.House.Rooms[room].Source.Building == building.Id;

    private static int PanelOf(CheckContext context, string id) => context.Layout.Panels.First(p => p.Source.Id == id).Place.Room;

    private static string Count(int count, string what) => FormattableString.Invariant($"{count} {what}{(count == 1 ? "" : "s")}");
}
