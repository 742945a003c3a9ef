using Estimator.Engine.Catalogue;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>At which loads of a unit of controls the feed may come in.</summary>
/// <remarks>Of loads under the same controls those nearest the switches and nearest the panel are tried, and a pinned one; none outdoors and none in
/// the housing of an exhaust fan, which comes down for service. Common practice, no source.</remarks>
internal static class LightFeeds
{
    /// <summary>The units that are fed at a load, in canonical order.</summary>
    internal static IEnumerable<LightFedIsland> Of(HouseLayout layout, ControlBoxes control, UnitCosts costs)
    {
        if (control.Switches.Length != 1)
        {
            return [];
        }

        var asked = NeutralAsked(layout, control);
        return Entries(layout, control, costs).Select(e => LightFedIsland.At(control, e, asked, costs.Between)).OfType<LightFedIsland>();
    }

    private static IEnumerable<int> Entries(HouseLayout layout, ControlBoxes control, UnitCosts costs)
    {
        foreach (var loads in control.LoadsByControls())
        {
            var open = loads.Where(b => Takes(layout, control.Draft(b))).ToList();
            if (open.Count > 0)
            {
                var bySwitch = open.MinBy(b => costs.Between(control.Switches[0], b));
                var byPanel = open.MinBy(b => costs.Between(costs.Panel, b));
                foreach (var box in open.Where(b => b == bySwitch || b == byPanel || costs.IsPinned(b)))
                {
                    yield return box;
                }
            }
        }
    }

    private static bool Takes(HouseLayout layout, DraftBox box) =>
        box.Use is not BoxUse.Weatherproof && box.Devices.All(d => layout.Devices[d].Kind is not DeviceKind.ExhaustFan);

    // A sensor asks for it wherever it is.
    private static bool NeutralAsked(HouseLayout layout, ControlBoxes control)
    {
        var draft = control.Draft(control.Switches[0]);
        return draft.Devices.Any(d => layout.Devices[d].Kind is DeviceKind.SensorSwitch)
            || control.Loads.SelectMany(b => control.Draft(b).Devices).Select(d => layout.Devices[d])
                .Any(d => SwitchNeutrals.AskedFor(d.Kind, layout.House.Rooms[d.Place.Room].Source.Kind));
    }
}
