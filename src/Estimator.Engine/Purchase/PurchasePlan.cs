using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;

namespace Estimator.Engine.Purchase;

/// <summary>What is bought, and how cable is cut.</summary>
public sealed record PurchasePlan
{
    /// <summary>The lines, in takeoff order.</summary>
    public required ImmutableArray<PurchaseLine> Lines { get; init; }

    /// <summary>The cut plan of each cable.</summary>
    public required ImmutableArray<CutPlan> Cuts { get; init; }

    /// <summary>Cost of all packs, the sum of the lines.</summary>
    public required Fact Total { get; init; }

    /// <summary>What the jobs need and nobody offers, in words: it is in no total.</summary>
    public IEnumerable<string> NotPriced => Lines.Where(l => l.Cost is null).Select(l => l.Description)
        .Concat(Cuts.Where(c => !c.TooLong.IsEmpty).Select(c => FormattableString.Invariant($"{c.TooLong.Length} run(s) of {c.ItemId} longer than any coil")));

    /// <summary>Items without a price, and runs longer than any coil.</summary>
    public ImmutableArray<Finding> Findings { get; init; } = [];

    /// <summary>Page of the explanation book.</summary>
    public required ExplanationPage Page { get; init; }
}
