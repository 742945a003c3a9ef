using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Voltage drop of a circuit at its farthest outlet, its load spread evenly over its outlets.</summary>
/// <remarks>Source: two conductors times the resistance of NEC chapter 9 table 9; spreading the load is our choice, common practice, no source.</remarks>
internal static class CircuitDrop
{
    internal static Fact Percent(DraftCircuit circuit, CircuitTree tree, int panel, IReadOnlyDictionary<int, Run> runInto, Fact loadA, WireSize wire, PageWriter page, Run? common = null)
    {
        var ohms = Conductors.For(wire).Read(page, Unit.Ohms, "ac_ohm_per_kft_cu_pvc_75C");
        var worst = tree.Boxes.MaxBy(b => tree.Up(b, panel).Sum(x => runInto[x].Total.Value * tree.OutletsThrough(x)));
        var all = page.Constant("Outlets on the circuit", Math.Max(1, circuit.Units.Sum(u => u.Outlets)), Unit.Each);
        var perFoot = page.Compute(Operation.Quotient, "ohms-per-foot", "Ohms a foot", Unit.Ohms, ohms, page.Constant("Feet of the table", 1000, Unit.Feet));
        Fact Lost(Run run, Fact beyond)
        {
            var feet = page.Compute(Operation.InFeet, "run-feet", "Length of the run", Unit.Feet, run.Total);
            var share = page.Compute(Operation.Quotient, "load-share", "Share of the load", Unit.Factor, beyond, all);
            return page.Compute(Operation.Product, "run-drop", "Voltage lost in the run", Unit.Volts, page.Constant("Conductors, out and back", 2), perFoot, feet, loadA, share);
        }

        List<Fact> drops = [.. tree.Up(worst, panel).Select(box => Lost(runInto[box], page.Constant("Outlets fed through the run", tree.OutletsThrough(box), Unit.Each)))];
        if (common is not null)
        {
            // The other leg may be idle, and then the neutral brings all of it back.
            drops.Add(Lost(common, all));
        }

        var volts = page.Sum("circuit-drop", "Voltage lost to the farthest outlet", Unit.Volts, drops);
        var part = page.Compute(Operation.Quotient, "drop-share", "Share of the voltage", Unit.Factor, volts, circuit.Rating.Volts);
        return page.Compute(Operation.Product, "drop-percent", "Voltage drop", Unit.Percent, part, page.Constant("Hundredths", 100));
    }

    /// <summary>The drop from which a thicker conductor is taken: the job's own limit, else what is advised over feeder and branch together.</summary>
    internal static Fact ThickerFrom(Job job, PageWriter page) => job.Practice.BranchVoltageDropPercent is not null ? Limit(job, page) : PracticeDefaults.ThickerConductorDropPercent.Read(page, Unit.Percent);

    internal static Fact Limit(Job job, PageWriter page) => job.Practice.BranchVoltageDropPercent is { } own
        ? page.Given("$.practice.branch_voltage_drop_percent", "Accepted voltage drop", own.ToHundredths(), Unit.Percent)
        : PracticeDefaults.BranchVoltageDropPercent.Read(page, Unit.Percent);
}
