using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>The load that the plan counts on a circuit.</summary>
/// <remarks>Lights, fans and alarms by the lamp-load table, equipment by its nameplate; general receptacles add none, NEC 220.14(J).</remarks>
internal static class CircuitLoad
{
    internal static Fact Of(HouseLayout layout, ImmutableArray<DraftBox> drafts, DraftCircuit circuit, PageWriter page)
    {
        List<Fact> loads = [];
        var boxes = circuit.Units.SelectMany(u => u.Boxes).ToList();
        loads.AddRange(boxes.Where(b => drafts[b].Equipment >= 0).Select(b => layout.Equipment[drafts[b].Equipment].LoadVa));
        var lamps = boxes.SelectMany(b => drafts[b].Devices).Select(d => layout.Devices[d].Kind).Where(k => k.IsLuminaireOrFan() || k.IsAlarm());
        foreach (var kind in lamps.GroupBy(k => k).OrderBy(g => g.Key))
        {
            var each = LampLoads.For(kind.Key).Read(page, Unit.VoltAmperes);
            loads.Add(page.Compute(Operation.Product, "lamp-load", "Lights, fans and alarms of a kind", Unit.VoltAmperes, each, page.Constant("How many", kind.Count(), Unit.Each)));
        }

        return page.Sum("circuit-load", "Load that the plan counts", Unit.VoltAmperes, loads);
    }

    /// <summary>The current that voltage drop is judged at: the load's own where it is known (lights, equipment), else a share of the breaker.</summary>
    internal static Fact DropCurrent(DraftCircuit circuit, Fact loadVa, PageWriter page)
    {
        var known = circuit.Group.Kind is CircuitKind.Lighting || (circuit.Group.Kind is CircuitKind.Individual && loadVa.Value > 0);
        return known
            ? page.Compute(Operation.Quotient, "load-current", "Load current", Unit.Amperes, loadVa, circuit.Rating.Volts)
            : page.Compute(
                Operation.PercentOf, "drop-current", "Current that voltage drop is judged at", Unit.Amperes, circuit.Rating.BreakerA,
                PracticeDefaults.VoltageDropLoadPercent.Read(page, Unit.Percent));
    }
}
