using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Wiring.Joints;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>The switches of one control in the order in which travellers join them: a three-way at each end, four-ways between.</summary>
/// <remarks>Source: common practice, no source; the poles and throws of the devices allow no other order.</remarks>
internal static class SwitchRow
{
    /// <summary>The order of the switches.</summary>
    /// <param name="switches">Device indexes.</param>
    /// <param name="layout">What kinds they are.</param>
    /// <param name="position">Where each stands in the row of switch boxes.</param>
    internal static ImmutableArray<int> Order(ImmutableArray<int> switches, HouseLayout layout, Func<int, int> position)
    {
        ImmutableArray<int> along = [.. switches.OrderBy(position).ThenBy(s => s)];
        var ends = along.Where(s => layout.Devices[s].Kind is not DeviceKind.FourWaySwitch).ToList();
        if (along.Length < 3 || ends.Count < 2)
        {
            return along;
        }

        return [ends[0], .. along.Where(s => s != ends[0] && s != ends[^1]), ends[^1]];
    }

    /// <summary>What a switch connects to, ground and neutral left out.</summary>
    /// <param name="control">Its control.</param>
    /// <param name="place">Its place in the row, from zero.</param>
    /// <param name="length">Switches in the row.</param>
    /// <param name="device">Its device index.</param>
    /// <param name="kind">Its kind.</param>
    internal static IEnumerable<Terminal> Terminals(int control, int place, int length, int device, DeviceKind kind)
    {
        if (length == 1)
        {
            var (feed, leg) = kind switch
            {
                DeviceKind.ThreeWaySwitch => (TerminalName.Common, TerminalName.TravellerA),
                DeviceKind.FourWaySwitch => (TerminalName.TravellerA, TerminalName.OnwardA),
                _ => (TerminalName.SwitchFeed, TerminalName.SwitchLeg),
            };
            return [Screw(feed, Net.Hot), Screw(leg, Net.Switched(control))];
        }

        if (place == 0 || place == length - 1)
        {
            var (common, a, b) = kind is DeviceKind.FourWaySwitch
                ? (TerminalName.TravellerA, TerminalName.OnwardA, TerminalName.OnwardB)
                : (TerminalName.Common, TerminalName.TravellerA, TerminalName.TravellerB);
            var pair = place == 0 ? 0 : 2 * length - 4;
            return [Screw(common, place == 0 ? Net.Hot : Net.Switched(control)), Screw(a, Net.Traveller(control, pair)), Screw(b, Net.Traveller(control, pair + 1))];
        }

        var before = 2 * place - 2;
        return
        [
            Screw(TerminalName.TravellerA, Net.Traveller(control, before)), Screw(TerminalName.TravellerB, Net.Traveller(control, before + 1)),
            Screw(TerminalName.OnwardA, Net.Traveller(control, before + 2)), Screw(TerminalName.OnwardB, Net.Traveller(control, before + 3)),
        ];

        Terminal Screw(TerminalName name, Net net) => new(device, name, net, Lead: false);
    }
}
