using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring;
using Estimator.Engine.Wiring.Feeders;

namespace Estimator.Engine.Loads;

/// <summary>Calculates each feeder from what it feeds, panels beyond it included.</summary>
/// <remarks>
/// Rooms count with their whole area wherever one of their general outlets hangs on the feeder. Not known: the area behind circuits that the panel
/// carries already; the sheet says so. Source: NEC 215.2(A), 220 part III.
/// </remarks>
internal static class FeederLoads
{
    internal static ImmutableArray<FeederLoad> Of(HouseLayout layout, WiringPlan wiring, PageWriter page) =>
        [.. layout.House.Job.Panels.Where(p => p.FedFrom is not null).Select(p => Of(p.Id, Sheet(layout, wiring, p, page), wiring.Feeders.FirstOrDefault(f => f.To == p.Id), page))];

    private static FeederLoad Of(string panel, LoadWorksheet sheet, Feeder? feeder, PageWriter page) => new(panel, sheet, feeder is null ? null : Drop(feeder, sheet.ExactAmperes, page));

    // Out on one leg and back on the other; the table gives copper, aluminium by its multiple.
    private static Fact Drop(Feeder feeder, Fact amperes, PageWriter page)
    {
        var copper = Conductors.For(feeder.Wire).Read(page, Unit.Ohms, "ac_ohm_per_kft_cu_pvc_75C");
        var ohms = feeder.Metal is ConductorMetal.Copper ? copper : page.Compute(Operation.Product, "feeder-ohms", "Resistance in aluminium", Unit.Ohms, copper, FeederRules.AluminiumResistance.Read(page, Unit.Factor));
        var perFoot = page.Compute(Operation.Quotient, "ohms-per-foot", "Ohms a foot", Unit.Ohms, ohms, page.Constant("Feet of the table", 1000, Unit.Feet));
        var feet = page.Compute(Operation.InFeet, "feeder-feet", "Length of the feeder", Unit.Feet, feeder.Total);
        var volts = page.Compute(Operation.Product, "feeder-drop", "Voltage lost in the feeder", Unit.Volts, page.Constant("Conductors, out and back", 2), perFoot, feet, amperes);
        var part = page.Compute(Operation.Quotient, "drop-share", "Share of the voltage", Unit.Factor, volts, EquipmentDefaults.For(EquipmentKind.Range).Read(page, Unit.Volts, "volts"));
        return page.Compute(Operation.Product, "drop-percent", "Voltage drop", Unit.Percent, part, page.Constant("Hundredths", 100));
    }

    internal static IEnumerable<Finding> Findings(HouseLayout layout, FeederLoad feeder)
    {
        var panel = layout.House.Job.Panels.First(p => p.Id == feeder.PanelId);
        var sizing = feeder.Sheet["sizing_amperes"];
        if (sizing.Value >= panel.RatingA.ToAmperes() + LoadRules.AmpereFraction.Number())
        {
            var year = (int)layout.House.Job.Code.Edition;
            yield return new Finding
            {
                Code = "feeder-load",
                Severity = Severity.Mandatory,
                Where = [panel.Id],
                Text = FormattableString.Invariant($"The feeder of panel {panel.Called()} must carry {sizing.Value:0.#} A and its breaker is {panel.RatingA.ToAmperes():0} A. State a larger rating, or move circuits to another panel."),
                Article = LoadArticles.Of("feeder_sizing", year),
                Edition = $"NEC {year}",
                Verified = LoadArticles.Seen("feeder_sizing", year),
                Figures = [sizing.Node],
            };
        }

        if (feeder.VoltageDropPercent is { } drop && drop.Value > FeederRules.DropPercent.Number())
        {
            yield return new Finding
            {
                Code = "feeder-drop",
                Severity = Severity.Advice,
                Where = [panel.Id],
                Text = FormattableString.Invariant($"The feeder of panel {panel.Called()} loses {drop.Value:0.0}% of its voltage at its load; {FeederRules.DropPercent.Number():0}% is advised. Hang the panel nearer, or ask for thicker conductors."),
                Article = "215.2(A)",
                Edition = $"NEC {(int)layout.House.Job.Code.Edition}",
                Verified = layout.House.Job.Code.Edition is not CodeEdition.Nec2026,
                Figures = [drop.Node],
            };
        }
    }

    private static LoadWorksheet Sheet(HouseLayout layout, WiringPlan wiring, Panel panel, PageWriter page)
    {
        var job = layout.House.Job;
        var fed = Fed(job, panel.Id);
        var circuits = wiring.Circuits.Where(c => fed.Contains(layout.Panels[c.Panel].Source.Id)).ToList();
        var pieces = circuits.SelectMany(c => c.Boxes).Select(b => wiring.Boxes[b].Equipment).Where(e => e >= 0).Select(e => layout.Equipment[e].Index).Distinct().Order();
        List<CountedLoad> all = [.. pieces.Select(i => CountedLoad.Of(layout, i, page)), .. CountedLoad.OfCircuits(job, p => fed.Contains(p.Id), page)];
        var rooms = circuits.Where(c => c.Kind is not (CircuitKind.Individual or CircuitKind.SmallAppliance or CircuitKind.Laundry))
            .SelectMany(c => c.Boxes).Select(b => wiring.Boxes[b].Place.Room).Distinct().Order().Select(r => layout.House.Rooms[r]).Where(r => JobLoads.Counts(r.Source));
        var area = page.Sum("feeder-area", "Floor area that hangs on the feeder", Unit.SquareFeet, [.. rooms.Select(r => r.AreaSquareFeet)]);
        var input = CountedLoad.Input(
            all, (int)job.Code.Edition, area, page.Constant("Small-appliance circuits on the feeder", circuits.Count(c => c.Kind is CircuitKind.SmallAppliance), Unit.Each),
            page.Constant("Laundry circuits on the feeder", circuits.Count(c => c.Kind is CircuitKind.Laundry), Unit.Each), page);
        var sheet = new DwellingLoads(page, input).Feeder([.. all.Where(x => x.Continuous && (x.IsFastened || x.Kind is EquipmentKind.EvCharger)).Select(x => x.Load)]);
        return sheet with { Notes = [.. sheet.Notes, .. Unknown(job, fed)] };
    }

    private static IEnumerable<string> Unknown(Job job, HashSet<string> fed)
    {
        var silent = job.Panels.Where(p => fed.Contains(p.Id)).SelectMany(p => PanelCircuits.Of(job, p)).Count(x => x.Circuit.LoadVa is null);
        if (silent > 0)
        {
            yield return $"{silent} circuit(s) that hang on the feeder already have no stated load and count as nothing here: state their load.";
        }
    }

    private static HashSet<string> Fed(Job job, string panel)
    {
        var fed = new HashSet<string>(StringComparer.Ordinal) { panel };
        while (job.Panels.FirstOrDefault(p => p.FedFrom is { } from && fed.Contains(from) && !fed.Contains(p.Id)) is { } next)
        {
            fed.Add(next.Id);
        }

        return fed;
    }
}
