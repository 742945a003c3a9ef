using System.Collections.Immutable;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring;

namespace Estimator.Engine.Checks;

/// <summary>The rules that were judged and are held, so that silence about a rule is never taken for a judgement.</summary>
/// <remarks>A rule that applies to nothing in the house, that wants for input, or that a local amendment waives, is not among them.</remarks>
public static class HeldRules
{
    private const string LoadUnknown = "service-load-unknown";

    /// <summary>The rules, in the order of the table.</summary>
    /// <param name="layout">Where everything stands.</param>
    /// <param name="wiring">Circuits, runs and boxes.</param>
    /// <param name="findings">What the checks found.</param>
    public static ImmutableArray<RuleRow> Of(HouseLayout layout, WiringPlan wiring, ImmutableArray<Finding> findings)
    {
        var found = findings.Where(f => f.Severity is not Severity.Note).Select(f => f.Code).ToHashSet(StringComparer.Ordinal);
        return [.. JudgedRules.All.Where(r => !found.Contains(r.Key) && Applies(r.Key, layout, wiring, found) && !Waived(layout.House.Job, r.Key))];
    }

    private static bool Applies(string rule, HouseLayout layout, WiringPlan wiring, HashSet<string> found)
    {
        var rooms = layout.House.Rooms;
        return rule switch
        {
            "receptacle-spacing" => rooms.Any(r => ReceptacleSpacing.AppliesTo(r.Source)),
            "counter-receptacles" => rooms.Any(r => r.Source.Kind is RoomKind.Kitchen && !r.Source.Counters.IsEmpty),
            "required-receptacle" => rooms.Any(r => r.Source.Kind is RoomKind.Bathroom or RoomKind.Hall or RoomKind.Foyer or RoomKind.Laundry or RoomKind.Garage
                or RoomKind.Basement or RoomKind.Utility or RoomKind.Outdoors),
            "lighting-outlet" => rooms.Any(r => LightingOutlets.AppliesTo(r.Source.Kind)),
            "entrance-light" => rooms.Any(r => OutsideDoors.AtGrade(layout.House, r.Level) && !OutsideDoors.Of(layout.House, r.Index).IsEmpty),
            "required-circuits" => rooms.Any(r => r.Source.Kind is RoomKind.Kitchen or RoomKind.Laundry or RoomKind.Bathroom or RoomKind.Garage),
            "panel-tandems" => layout.Panels.Any(p => p.Source.TandemSpaces > 0) && !found.Contains("panel-spaces"),
            "panel-spaces" => !layout.Panels.IsEmpty,
            "service-load" => layout.House.Job.Panels.Any(p => p.FedFrom is null) && !found.Contains(LoadUnknown),
            "service-least" => layout.House.Job.Panels.Any(p => p.FedFrom is null),
            "smoke-alarm" => !rooms.IsEmpty,
            _ => !wiring.Circuits.IsEmpty,
        };
    }

    private static bool Waived(Job job, string rule) => job.Code.Amendments.Any(a => a.Rule == rule && a.Kind is AmendmentKind.Relax && a.Value is null);
}
