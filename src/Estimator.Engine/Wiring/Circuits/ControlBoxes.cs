using System.Collections.Immutable;
using Estimator.Engine.Controls;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Joints;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>The boxes of a unit of controls: which hold switches, which hold loads, and what acts on what.</summary>
internal sealed class ControlBoxes
{
    private readonly HouseLayout _layout;
    private readonly ControlPlan _controls;
    private readonly ImmutableArray<DraftBox> _drafts;
    private readonly Dictionary<int, int> _boxOf;

    internal ControlBoxes(HouseLayout layout, ControlPlan controls, ImmutableArray<DraftBox> drafts, ImmutableArray<int> boxes, ImmutableArray<int> groups)
    {
        (_layout, _controls, _drafts, Groups) = (layout, controls, drafts, groups);
        _boxOf = boxes.SelectMany(b => drafts[b].Devices.Select(d => (Device: d, Box: b))).ToDictionary(x => x.Device, x => x.Box);
        Switches = [.. boxes.Where(b => drafts[b].Devices.Any(d => layout.Devices[d].Kind.IsSwitch()))];
        Loads = [.. boxes.Except(Switches)];
    }

    /// <summary>Its control groups.</summary>
    internal ImmutableArray<int> Groups { get; }

    /// <summary>Boxes with a switch.</summary>
    internal ImmutableArray<int> Switches { get; }

    /// <summary>Boxes without one.</summary>
    internal ImmutableArray<int> Loads { get; }

    /// <summary>The box of a device.</summary>
    internal int BoxOf(int device) => _boxOf[device];

    /// <summary>The box itself.</summary>
    internal DraftBox Draft(int box) => _drafts[box];

    /// <summary>Further boxes that may hang on a box of loads.</summary>
    internal int Room(int box) => LoadRoom.Of(_drafts[box]);

    /// <summary>The controls that act on something in a box.</summary>
    internal ImmutableArray<int> ActingOn(int box) =>
        [.. Groups.Where(g => _controls.Groups[g].Loads.Any(l => _drafts[box].Devices.Contains(l.Device)))];

    /// <summary>The boxes of loads, those together on which the same controls act.</summary>
    internal ImmutableArray<ImmutableArray<int>> LoadsByControls() =>
        [.. Loads.GroupBy(b => string.Join(',', ActingOn(b))).OrderBy(g => g.Min()).Select(g => g.Order().ToImmutableArray())];

    /// <summary>Whether something in a box of loads stays hot whatever the switches do.</summary>
    internal bool NeedsHot(int box) => _drafts[box].Devices.Any(d => _layout.Devices[d].Kind switch
    {
        DeviceKind.HalfHotReceptacle => true,
        DeviceKind.CeilingFan => PartsActedOn(d) is not (true, true),
        _ => false,
    });

    /// <summary>A control's switches in the order in which travellers join them.</summary>
    internal ImmutableArray<int> InRow(int group, Func<int, int> position) => SwitchRow.Order(_controls.Groups[group].Switches, _layout, position);

    /// <summary>What the switches connect to.</summary>
    internal IEnumerable<Terminal> SwitchTerminals(Func<int, int> position) => Groups.SelectMany(g => SwitchTerminals(g, InRow(g, position)));

    private IEnumerable<Terminal> SwitchTerminals(int group, ImmutableArray<int> row)
    {
        for (var i = 0; i < row.Length; i++)
        {
            foreach (var terminal in SwitchRow.Terminals(group, i, row.Length, row[i], _layout.Devices[row[i]].Kind))
            {
                yield return terminal;
            }

            yield return new Terminal(row[i], TerminalName.Ground, Net.Ground, Lead: false);
            if (_layout.Devices[row[i]].Kind is DeviceKind.SensorSwitch)
            {
                yield return new Terminal(row[i], TerminalName.Neutral, Net.NeutralOf(group), Lead: false);
            }
        }
    }

    private (bool Fan, bool Light) PartsActedOn(int device)
    {
        var parts = Groups.SelectMany(g => _controls.Groups[g].Loads).Where(l => l.Device == device).Select(l => l.Part).ToHashSet();
        return (parts.Contains(LoadPart.Whole) || parts.Contains(LoadPart.Fan), parts.Contains(LoadPart.Whole) || parts.Contains(LoadPart.Light));
    }
}
