using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.Purchase.Suppliers;

namespace Estimator.Engine.Payments;

/// <summary>What each phase of a job costs directly: its hours at the crew's cost, the material that it needs first, and what others charge. Common practice, no source.</summary>
internal static class PhaseWeights
{
    private static readonly ImmutableArray<(string Id, string Title, ImmutableArray<WorkPhase> Phases)> Lines =
    [
        ("rough_in", "Rough-in, ready for rough inspection", [WorkPhase.Layout, WorkPhase.RoughIn]),
        ("panel", "Panel and service", [WorkPhase.Panel]),
        ("trim_out", "Trim-out: devices, plates, fixtures", [WorkPhase.TrimOut]),
        ("test_final", "Tests and final inspection", [WorkPhase.TestAndInspection]),
    ];

    internal static ImmutableArray<(string Id, string Title, Fact Weight)> Of(PageWriter page, JobEstimate estimate, PartsCatalogue catalogue)
    {
        var byPhase = estimate.Purchase.Lines.Where(l => l.Cost is not null)
            .ToLookup(l => BuyingPhase.Of(catalogue, l.ItemId), l => new Fact(l.Cost!.Value.Value.ToDollars(), Unit.Dollars, l.Cost.Value.Node));
        var phases = Lines.Select(line => (line.Id, line.Title, page.Sum("phase-cost", $"{line.Title}: hours and material", Unit.Dollars, [.. Hours(page, estimate, line.Phases), .. line.Phases.SelectMany(p => byPhase[p])])));
        var others = estimate.Bid.DirectCost.Where(l => !IsSpread(l.Id)).Select(l => (l.Id, l.Label, l.Amount));
        return [.. others.Where(l => l.Id == "permit").Concat(phases).Concat(others.Where(l => l.Id != "permit")).Where(l => l.Item3.Value > 0)];
    }

    // What the phases carry already: material with its tax, and labor.
    private static bool IsSpread(string id) => id.StartsWith("material", StringComparison.Ordinal) || id.StartsWith("labor", StringComparison.Ordinal);

    private static IEnumerable<Fact> Hours(PageWriter page, JobEstimate estimate, ImmutableArray<WorkPhase> phases) => phases.Where(estimate.Labor.ByPhase.ContainsKey)
        .Select(p => page.Compute(Operation.Product, "phase-labor", "Hours at the crew's loaded cost", Unit.Dollars, estimate.Labor.ByPhase[p], estimate.Bid.HourCost));
}
