using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Purchase;

namespace Estimator.Web.Purchase;

/// <summary>What the coils of one cable come to.</summary>
/// <param name="Price">What they cost; null where nothing is priced.</param>
/// <param name="Bought">Cable on the coils, those from the shelf among them.</param>
/// <param name="InPieces">Cable in the pieces.</param>
/// <param name="Left">Cable left on all coils.</param>
/// <param name="Kept">Of that, ends worth keeping.</param>
/// <param name="Wasted">Trims, and ends too short to keep.</param>
/// <param name="Gap">What could be saved at most; null where the plan is proven cheapest.</param>
public sealed record CutSums(Fact? Price, Fact Bought, Fact InPieces, Fact Left, Fact Kept, Fact Wasted, Fact? Gap)
{
    private const int CentsInDollar = 100;

    internal static CutSums Of(PageWriter page, CutPlan plan, PurchaseLine line, ImmutableArray<CoilCut> coils)
    {
        Fact Sum(string rule, string label, IEnumerable<Fact> facts) => page.Sum(rule, label, Unit.Length, [.. facts]);
        Fact? price = line.Cost is { } cost ? new Fact(cost.Value.ToDollars(), Unit.Dollars, cost.Node) : null;
        var bought = Sum("coils", "Cable on all coils", coils.Select(c => c.Whole));
        var pieces = Sum("cut-pieces", "Cable in all pieces", coils.SelectMany(c => c.Pieces).Select(p => p.Length));
        var kept = Sum("coils-kept", "Ends worth keeping", coils.Where(c => c.Kept).Select(c => c.Left));
        return new CutSums(
            price, bought, pieces, Sum("coils-left", "Left on all coils", coils.Select(c => c.Left)), kept,
            page.Compute(Operation.Difference, "cut-waste", "Trims, and ends too short to keep", Unit.Length, bought, pieces, kept), plan.Proven || price is null ? null : Saving(page, plan, price.Value));
    }

    private static Fact Saving(PageWriter page, CutPlan plan, Fact price)
    {
        var cents = page.Constant("Cents that any choice of coils costs at least, proven by the search", (int)decimal.Floor(plan.LowerBound.ToDollars() * CentsInDollar), Unit.Each);
        var least = page.Compute(Operation.Quotient, "cut-bound", "No choice of coils costs less", Unit.Dollars, cents, page.Constant("Cents in a dollar", CentsInDollar, Unit.Each));
        return page.Compute(Operation.Difference, "cut-gap", "What could be saved at most", Unit.Dollars, price, least);
    }
}
