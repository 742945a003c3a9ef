using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring;
using Estimator.Engine.Wiring.Feeders;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Takeoff;

/// <summary>Counts new panels, their feeders, and circuits that are landed anew: moved, put on tandems, or of a panel that is replaced.</summary>
internal sealed class PanelWork(HouseLayout layout, WiringPlan wiring, PartsCatalogue catalogue, LineCollecting lines, PageWriter page)
{
    internal void Add()
    {
        foreach (var panel in layout.Panels.Select(p => p.Source))
        {
            if (!panel.Existing)
            {
                New(panel);
            }

            Landed(panel);
            Tandems(panel);
        }

        foreach (var feeder in wiring.Feeders)
        {
            Feeder(feeder);
        }
    }

    private void New(Panel panel)
    {
        lines.AddOne(PanelItem(panel), "New panel", panel.Id);
        if (panel.FedFrom is not null)
        {
            lines.AddOne("ground-bar", "Bar that keeps grounds and neutrals apart, 250.142(B)", panel.Id);
            return;
        }

        if (layout.House.Job.Service is not null)
        {
            return;
        }

        lines.Add("ground-rod", TakeoffRules.GroundRods.Read(page, Unit.Each), panel.Id);
        lines.Add("electrode-conductor", TakeoffRules.ElectrodeConductor.ReadFeet(page), panel.Id);
        if ((int)layout.House.Job.Code.Edition >= TakeoffRules.SurgeFromEdition.Number())
        {
            lines.AddOne("surge-protector", "Surge protection of a new service panel", panel.Id);
        }
    }

    // A panel takes its own rating or the next larger one that is sold.
    private string PanelItem(Panel panel)
    {
        const string Prefix = "panel-";
        var rating = panel.RatingA.ToAmperes();
        var sold = catalogue.Items.Where(i => i.Id.StartsWith(Prefix, StringComparison.Ordinal)).Select(i => int.TryParse(i.Id[Prefix.Length..], out var a) ? a : 0).Where(a => a >= rating).Order().ToList();
        return sold.Count > 0 && panel.FedFrom is not null ? $"{Prefix}{sold[0]}" : $"{Prefix}{rating:0}";
    }

    private void Landed(Panel panel)
    {
        foreach (var (circuit, _, _) in PanelCircuits.Of(layout.House.Job, panel).Where(x => x.Landed))
        {
            var moved = circuit.MovedTo is not null;
            lines.AddOne(moved ? "circuit-moved" : "circuit-landed", moved ? "Circuit moved from one panel to another" : "Circuit of the old panel landed in the new one", panel.Id);
            lines.AddOne($"breaker-{circuit.Poles}-{circuit.BreakerA.ToAmperes():0}-plain", "Breaker of a circuit that is landed anew", panel.Id);
            lines.AddOne("circuit-label", "Directory entry of the circuit", panel.Id);
        }
    }

    // One tandem serves two circuits; an odd one takes a whole tandem.
    private void Tandems(Panel panel)
    {
        foreach (var rated in PanelCircuits.Of(layout.House.Job, panel).Where(x => !x.Landed && x.Circuit.NewTandem).GroupBy(x => x.Circuit.BreakerA).OrderBy(g => g.Key))
        {
            var halves = page.Constant("Circuits put on tandems", rated.Count(), Unit.Each);
            var tandems = page.Compute(Operation.Quotient, "tandems", "Circuits by two", Unit.Each, halves, page.Constant("Circuits of a tandem", 2, Unit.Each));
            lines.Add($"breaker-tandem-{rated.Key.ToAmperes():0}", page.Compute(Operation.RoundUp, "tandems", "Tandem breakers", Unit.Each, tandems, page.Constant("Whole ones", 1, Unit.Each)), panel.Id);
        }
    }

    private void Feeder(Feeder feeder)
    {
        lines.AddOne($"breaker-2-{feeder.BreakerA.Value:0}-plain", "Breaker of the feeder", feeder.From);
        if (RunMethods.Raceway(feeder.Method) is { } raceway)
        {
            new RacewayParts(lines, page).Add(new PulledConductors(feeder.Path, Sized(feeder), feeder.Wire, (int)FeederRules.Conductors.Number(), feeder.Ground, feeder.To), raceway);
            return;
        }

        lines.Add(feeder.ItemId, Sized(feeder), feeder.To);
        var armored = feeder.Method is WiringMethod.Mc;
        lines.Add(armored ? "mc-connector" : "cable-clamp", page.Constant("Connectors of the feeder, one at each panel", 2, Unit.Each), feeder.To);
        if (armored)
        {
            lines.Add("mc-bushing", page.Constant("Bushings of the feeder, one at each panel", 2, Unit.Each), feeder.To);
        }

        if (!feeder.Fished)
        {
            lines.Add(armored ? "mc-strap" : "staple", armored ? Support.OfArmored(page, feeder.Path) : Support.Fasteners(page, feeder.Path), feeder.To);
            lines.Add("bored-hole", feeder.Path.Bores, feeder.To);
        }
    }

    private Fact Sized(Feeder feeder) => page.Compute(Operation.Because, "feeder-cable", "Length of the feeder, sized by its breaker", Unit.Length, feeder.Total, feeder.BreakerA, feeder.AmpacityA);
}
