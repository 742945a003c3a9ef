using System.Collections.Immutable;
using Estimator.Engine.Changes;
using Estimator.Engine.Contracts;
using Estimator.Engine.Measures;
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

    private static ImmutableArray<ChangeLine> Lines(ChangePrice price) =>
    [
        .. price.Lines.Where(l => l.Amount.Value != 0).Select(l => new ChangeLine(Kind(l), l.Description, decimal.Round(l.Quantity.Value, 2, MidpointRounding.AwayFromZero), l.Unit, Dollars(l.Amount.Value))),
        .. price.Sums.Where(s => s.Id is not ("added" or "removed") && s.Amount.Value != 0).Select(s => new ChangeLine(ChangeLineKind.Added, s.Label, 0, "each", Dollars(s.Amount.Value))),
    ];

    private static ChangeLineKind Kind(Engine.Changes.ChangeLine line) =>
        line.Kind is ChangeKind.Added ? ChangeLineKind.Added : line.Amount.Value > 0 ? ChangeLineKind.Removal : ChangeLineKind.Credit;

    private static Money Dollars(decimal dollars) => Money.FromDollars(dollars);
}
