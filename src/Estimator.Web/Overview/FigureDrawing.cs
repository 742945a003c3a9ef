using Estimator.Engine;
using Estimator.Engine.Explanations;

namespace Estimator.Web.Overview;

/// <summary>Draws figures from the stages of an estimate.</summary>
internal sealed class FigureDrawing(PageWriter page, JobEstimate estimate)
{
    internal Fact Count(string rule, string label, IReadOnlyList<Fact> counted) => page.Compute(Operation.Count, rule, label, Unit.Each, [.. counted]);

    internal Fact Quantities(string category, string label, Unit unit) =>
        page.Sum($"all-{category}", label, unit, [.. estimate.Takeoff.Lines.Where(l => l.Category == category).Select(l => l.Quantity)]);

    internal Fact Bid(string line) =>
        estimate.Bid.DirectCost.Concat(estimate.Bid.Additions).FirstOrDefault(l => l.Id == line)?.Amount ?? page.Constant(line, 0, Unit.Dollars);

    internal Fact Per(string rule, string label, Unit unit, Fact sum, Fact count) =>
        count.Value == 0 ? page.Constant(label, 0, unit) : page.Compute(Operation.Quotient, rule, label, unit, sum, count);

    internal Fact Share(string rule, string label, Fact part, Fact whole) => whole.Value == 0
        ? page.Constant(label, 0, Unit.Percent)
        : page.Compute(Operation.Product, rule, label, Unit.Percent, page.Compute(Operation.Quotient, rule, label, Unit.Factor, part, whole), page.Constant("Hundredths", 100));

    // An hour carries the same additions as every dollar of direct cost.
    internal Fact SellingHour() => estimate.Bid.DirectTotal.Value == 0
        ? estimate.Bid.HourCost
        : page.Compute(
            Operation.Product, "selling-hour", "Selling rate of an hour", Unit.Dollars, estimate.Bid.HourCost,
            page.Compute(Operation.Quotient, "selling-hour", "Price for a dollar of direct cost", Unit.Factor, estimate.Bid.Price, estimate.Bid.DirectTotal));
}
