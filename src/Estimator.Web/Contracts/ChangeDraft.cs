using System.Collections.Immutable;
using Estimator.Engine.Changes;
using Estimator.Engine.Contracts;
using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;
using Estimator.Engine.Pricing;
using Estimator.Web.Revisions;
using ChangeLine = Estimator.Engine.Contracts.ChangeLine;

namespace Estimator.Web.Contracts;

/// <summary>Makes a change order of two saved revisions: its lines, overhead and profit among them, add up to its price.</summary>
internal static class ChangeDraft
{
    internal static ChangeOrder Of(RevisionPaper from, RevisionPaper to, WorkDone done, string reason, int? days)
    {
        var price = ChangePricing.Of(from.Estimate, to.Estimate, done);
        return new ChangeOrder(from.Saved.Summary.Number, to.Saved.Summary.Number, Lines(price), Dollars(price.Price.Value), days ?? decimal.ToInt32(price.Days.Value), reason.Trim(), []);
    }

    /// <summary>What explains the amounts of its lines, in their order.</summary>
    internal static ImmutableArray<Fact> Amounts(ChangePrice price) => [.. Items(price).Select(l => l.Amount), .. Shares(price).Select(s => s.Amount)];

    private static ImmutableArray<ChangeLine> Lines(ChangePrice price) =>
    [
        .. Items(price).Select(l => new ChangeLine(Kind(l), l.Description, decimal.Round(l.Quantity.Value, 2, MidpointRounding.AwayFromZero), l.Unit, Dollars(l.Amount.Value))),
        .. Shares(price).Select(s => new ChangeLine(ChangeLineKind.Added, s.Label, 0, "each", Dollars(s.Amount.Value))),
    ];

    private static IEnumerable<Engine.Changes.ChangeLine> Items(ChangePrice price) => price.Lines.Where(l => l.Amount.Value != 0);

    private static IEnumerable<BidLine> Shares(ChangePrice price) => price.Sums.Where(s => s.Id is not ("added" or "removed") && s.Amount.Value != 0);

    private static ChangeLineKind Kind(Engine.Changes.ChangeLine line) =>
        line.Kind is ChangeKind.Added ? ChangeLineKind.Added : line.Amount.Value > 0 ? ChangeLineKind.Removal : ChangeLineKind.Credit;

    private static Money Dollars(decimal dollars) => Money.FromDollars(dollars);
}
