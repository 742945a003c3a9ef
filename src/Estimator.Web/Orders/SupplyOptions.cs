using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase;
using Estimator.Engine.Purchase.Suppliers;
using Estimator.Web.Figures;

namespace Estimator.Web.Orders;

/// <summary>The ways to divide a purchase among suppliers, side by side, and what explains their figures.</summary>
/// <param name="Plans">What everything costs at each supplier.</param>
/// <param name="Options">The ways.</param>
/// <param name="Pages">Pages of the explanation book.</param>
public sealed record SupplyOptions(SupplyPlans Plans, ImmutableArray<SupplyOption> Options, ImmutableArray<ExplanationPage> Pages)
{
    /// <summary>Works the ways out.</summary>
    /// <param name="plans">What everything costs at each supplier.</param>
    /// <param name="ask">Which supplier is preferred.</param>
    public static SupplyOptions Of(SupplyPlans plans, OrderAsk ask)
    {
        var page = new PageWriter(FigurePages.SupplyChoice);
        var table = plans.Table;
        List<(SupplyWish Wish, SupplyChoice Choice)> ways = [(SupplyWish.Split, SupplyChoosing.Split(table)), (SupplyWish.One, SupplyChoosing.Single(table)[0])];
        if (table.Terms.Any(t => t.Supplier == ask.Preferred))
        {
            ways.Add((SupplyWish.Preferred, SupplyChoosing.Preferred(table, ask.Preferred, Percent.FromHundredths(ask.Within))));
        }

        ImmutableArray<SupplyOption> options = [.. ways.Select(w => Option(page, plans, w.Wish, w.Choice))];
        return new SupplyOptions(plans, options, [.. plans.Plans.Select((p, s) => p.Page.Renumbered(n => n == Buying.PageNumber ? PageOf(s) : n)), page.ToPage()]);
    }

    /// <summary>The way that is asked for; the first where it is not among them.</summary>
    public SupplyOption Chosen(SupplyWish? wish) => Options.FirstOrDefault(o => o.Wish == wish, Options[0]);

    private static int PageOf(int supplier) => FigurePages.SupplierPlans - supplier;

    private static SupplyOption Option(PageWriter page, SupplyPlans plans, SupplyWish wish, SupplyChoice choice)
    {
        ImmutableArray<SupplyOrderFigures> orders = [.. choice.Orders.Select(o => Figures(page, plans, o))];
        return new SupplyOption(wish, choice, orders, page.Sum("supply-total", "All orders", Unit.Dollars, [.. orders.Select(o => o.Total)]));
    }

    private static SupplyOrderFigures Figures(PageWriter page, SupplyPlans plans, SupplierOrder order)
    {
        var at = plans.Table.Terms.Select(t => t.Supplier).ToImmutableArray().IndexOf(order.Supplier);
        var terms = plans.Table.Terms[at];
        var lines = plans.Plans[at].Lines.ToDictionary(l => l.ItemId, StringComparer.Ordinal);
        var goods = page.Sum("supply-goods", $"Goods of {order.Supplier}", Unit.Dollars, [.. order.Items.Select(i => lines[i].Cost!.Value).Select(c => new Fact(c.Value.ToDollars(), Unit.Dollars, c.Node with { Page = PageOf(at) }))]);
        Fact Stated(string what, string label, Money money) => page.Row("suppliers.csv", $"{order.Supplier}.{what}", label, money.ToDollars(), Unit.Dollars);
        Fact? fill = order.FillUp > Money.Zero
            ? page.Compute(Operation.Difference, "supply-fill-up", $"Short of the smallest order of {order.Supplier}", Unit.Dollars, Stated("minimum", "Smallest order", terms.Minimum), goods)
            : null;
        Fact? delivery = order.Delivery > Money.Zero ? Stated("delivery", $"Delivery of {order.Supplier}", order.Delivery) : null;
        return new SupplyOrderFigures(order, goods, fill, delivery, page.Sum("supply-order", $"Order at {order.Supplier}", Unit.Dollars, [goods, .. fill is { } f ? new[] { f } : [], .. delivery is { } d ? new[] { d } : []]));
    }
}
