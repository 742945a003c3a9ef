using System.Collections.Immutable;
using Estimator.Engine.Explanations;

namespace Estimator.Engine.Payments;

/// <summary>Divides a price by weights into whole cents that add up to it exactly: each share is cut to the cent below, and the cents left over go to the largest remainders.</summary>
/// <remarks>The method of largest remainders, known from apportionment; of equal remainders the earlier line comes first.</remarks>
internal static class PriceShares
{
    internal static ImmutableArray<Fact> Divide(PageWriter page, Fact price, ImmutableArray<(string Label, Fact Weight)> parts)
    {
        var all = page.Sum("schedule-weight", "Weight of all lines", parts[0].Weight.Unit, [.. parts.Select(p => p.Weight)]);
        var cent = Cent(page);
        var exact = parts.Select(p => page.Compute(
            Operation.Quotient, "schedule-share", $"{p.Label}: share of the price", Unit.Dollars, page.Compute(Operation.Product, "schedule-share", "Price times weight", Unit.Dollars, price, p.Weight), all)).ToList();
        var down = exact.Select(e => page.Compute(Operation.RoundDown, "schedule-cents", "Cut to the cent", Unit.Dollars, e, cent)).ToList();
        var left = decimal.ToInt32((price.Value - down.Sum(d => d.Value)) / cent.Value);
        var raised = Enumerable.Range(0, exact.Count).OrderByDescending(i => exact[i].Value - down[i].Value).ThenBy(i => i).Take(left).ToHashSet();
        return
        [
            .. parts.Select((p, i) => raised.Contains(i)
                ? page.Compute(Operation.Sum, "largest-remainder", $"{p.Label}, with a cent that was left over", Unit.Dollars, down[i], cent)
                : page.Compute(Operation.Because, "schedule-cents", p.Label, Unit.Dollars, down[i])),
        ];
    }

    internal static Fact Cent(PageWriter page) =>
        page.Compute(Operation.Quotient, "cent", "A cent", Unit.Dollars, page.Constant("One dollar", 1, Unit.Dollars), page.Constant("Cents", 100));
}
