using System.Collections.Immutable;
using Estimator.Engine.Controls;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Wiring.Boxes;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Finds which boxes must stand on one circuit: those that a control, a shared box or an alarm interconnect ties together.</summary>
internal static class UnitForming
{
    /// <summary>The boxes of each unit, in canonical order.</summary>
    internal static ImmutableArray<ImmutableArray<int>> Form(HouseLayout layout, ControlPlan controls, ImmutableArray<DraftBox> boxes)
    {
        var root = Enumerable.Range(0, boxes.Length).ToArray();
        var boxOf = boxes.SelectMany(b => b.Devices.Select(d => (d, b.Index))).ToDictionary(x => x.d, x => x.Index);
        foreach (var group in controls.Groups.Where(g => !g.Switches.IsEmpty))
        {
            Tie(root, group.Switches.Concat(group.Loads.Select(l => l.Device)).Select(d => boxOf[d]));
        }

        foreach (var alarms in Enumerable.Range(0, layout.Devices.Length).Where(d => layout.Devices[d].Kind.IsAlarm()).GroupBy(d => layout.House.Rooms[layout.Devices[d].Place.Room].Source.Building))
        {
            Tie(root, alarms.Select(d => boxOf[d]));
        }

        return [.. Enumerable.Range(0, boxes.Length).GroupBy(b => Find(root, b)).OrderBy(g => g.Min()).Select(g => g.ToImmutableArray())];
    }

    private static void Tie(int[] root, IEnumerable<int> boxes)
    {
        int? first = null;
        foreach (var box in boxes)
        {
            var found = Find(root, box);
            first ??= found;
            var (low, high) = (Math.Min(first.Value, found), Math.Max(first.Value, found));
            root[high] = low;
            first = low;
        }
    }

    private static int Find(int[] root, int box)
    {
        while (root[box] != box)
        {
            box = root[box];
        }

        return box;
    }
}
