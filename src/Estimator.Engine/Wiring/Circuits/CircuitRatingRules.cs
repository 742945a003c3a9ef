using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Rates a circuit: by its kind, by its breaker where the user pinned one, or by the nameplate of its equipment.</summary>
internal static class CircuitRatingRules
{
    /// <summary>The rating of a circuit of several outlets.</summary>
    /// <remarks>Source: NEC 210.11(C) for required circuits, 210.24 table for the conductor.</remarks>
    internal static CircuitRating ForKind(CircuitKind kind, Fact? pinned, PageWriter page)
    {
        var breaker = pinned ?? CircuitRatings.For(kind).Read(page, Unit.Amperes);
        return new CircuitRating(breaker, Poles: 1, CircuitRatings.Volts.Read(page, Unit.Volts), SmallestWire(breaker.Value), Conductors: 2);
    }

    /// <summary>The rating of a circuit for one piece of equipment.</summary>
    /// <remarks>
    /// Source: NEC 210.20(A) continuous load at 125%, 240.6(A) next standard size, 440.4 and 440.22 nameplate ampacity and device, 210.19(A)(3) least
    /// rating for a range; conductors end at 60 C, 334.80. A smallest rating for the kind comes from the equipment table. A nameplate's maximum that is no
    /// standard size takes the next lower one.
    /// </remarks>
    internal static CircuitRating ForEquipment(LaidEquipment equipment, Fact? pinned, PageWriter page)
    {
        var row = EquipmentDefaults.For(equipment.Source.Kind);
        var poles = equipment.Volts.Value > CircuitRatings.Volts.Number() ? 2 : 1;
        var breaker = pinned ?? Breaker(equipment, row, page);
        var needed = equipment.Source.MinimumCircuitAmpacityA is { } mca ? mca.ToAmperes() : breaker.Value;
        var wire = SmallestWire(needed);
        return new CircuitRating(breaker, poles, equipment.Volts, wire, poles == 2 && row.Flag("neutral") ? 3 : 2);
    }

    /// <summary>The rating of a 240 V receptacle without stated equipment.</summary>
    internal static CircuitRating ForReceptacle240(Fact? pinned, PageWriter page)
    {
        var row = EquipmentDefaults.For(EquipmentKind.Dryer);
        var breaker = pinned ?? row.Read(page, Unit.Amperes, "least_breaker_a");
        return new CircuitRating(breaker, Poles: 2, row.Read(page, Unit.Volts, "volts"), SmallestWire(breaker.Value), Conductors: 3);
    }

    private static Fact Breaker(LaidEquipment equipment, RuleRow row, PageWriter page)
    {
        if (equipment.Source.MaximumOvercurrentDeviceA is { } mocp)
        {
            var most = page.Given($"$.equipment[{equipment.Index}].maximum_overcurrent_device_a", "Nameplate maximum overcurrent device", mocp.ToAmperes(), Unit.Amperes);
            var standard = StandardBreakers.AtMost(most.Value).Read(page, Unit.Amperes);
            return page.Compute(Operation.Because, "breaker-within-nameplate", "Largest standard breaker within the nameplate", Unit.Amperes, standard, most);
        }

        var amps = page.Compute(Operation.Quotient, "load-current", "Load current", Unit.Amperes, equipment.LoadVa, equipment.Volts);
        var counted = row.Flag("continuous")
            ? page.Compute(Operation.PercentOf, "continuous-load", "Continuous load at 125%", Unit.Amperes, amps, StandardBreakers.ContinuousPercent.Read(page, Unit.Percent))
            : amps;
        var least = row.Has("least_breaker_a") ? row.Read(page, Unit.Amperes, "least_breaker_a") : CircuitRatings.For(CircuitKind.Lighting).Read(page, Unit.Amperes);
        var asked = page.Compute(Operation.Maximum, "breaker-asked", "Least breaker", Unit.Amperes, counted, least);
        return page.Compute(Operation.Because, "next-standard-breaker", "Next standard breaker", Unit.Amperes, StandardBreakers.AtLeast(asked.Value).Read(page, Unit.Amperes), asked);
    }

    // Beyond the table the thickest conductor is taken, and the check of conductor to breaker says so.
    private static WireSize SmallestWire(decimal amps)
    {
        var known = WireSize.All.Where(s => s >= WireSize.Awg14 && Conductors.Has(s)).ToList();
        return known.Where(s => Carries(Conductors.For(s), amps)).DefaultIfEmpty(known[^1]).First();
    }

    private static bool Carries(RuleRow row, decimal amps) =>
        row.Number("ampacity_cu_60C") >= amps && (!row.Has("ocpd_max_cu_240_4_D") || row.Number("ocpd_max_cu_240_4_D") >= amps);
}
