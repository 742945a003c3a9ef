using System.Collections.Immutable;
using Estimator.Engine.Changes;
using Estimator.Engine.Contracts;
using Estimator.Engine.Explanations;
using Estimator.Web.Explanations;
using Estimator.Web.Revisions;

namespace Estimator.Web.Contracts;

/// <summary>What explains the figures of a change order that is kept.</summary>
/// <param name="Price">Its price.</param>
/// <param name="Amounts">The amounts of its lines, in their order.</param>
/// <param name="Source">Where their explanations stand.</param>
internal sealed record ExplainedChange(Fact Price, ImmutableArray<Fact> Amounts, FigureSource Source)
{
    /// <summary>The change worked out again from its two revisions; null where that does not give what was written, as after a change of the program.</summary>
    internal static ExplainedChange? Of(ChangeOrder order, RevisionPaper from, RevisionPaper to)
    {
        // How far the work was is not kept with the order: what gives its amounts was it.
        foreach (var done in Enum.GetValues<WorkDone>())
        {
            var price = ChangePricing.Of(from.Estimate, to.Estimate, done);
            var amounts = ChangeDraft.Amounts(price);
            if (price.Price.Value == order.Price.ToDollars() && amounts.Select(a => (decimal?)a.Value).SequenceEqual(order.Lines.Select(l => l.Amount?.ToDollars())))
            {
                return new ExplainedChange(price.Price, amounts, new FigureSource(price.Book, to.Saved.Job));
            }
        }

        return null;
    }
}
