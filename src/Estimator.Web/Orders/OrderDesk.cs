using System.Collections.Immutable;
using Estimator.Data.Jobs;
using Estimator.Data.Orders;
using Estimator.Data.Stock;
using Estimator.Data.Suppliers;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase;
using Estimator.Engine.Purchase.Orders;
using Estimator.Engine.Purchase.Suppliers;
using Estimator.Web.Catalogues;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;

namespace Estimator.Web.Orders;

/// <summary>Works out what several jobs buy together, and writes it as orders, one a supplier.</summary>
public sealed class OrderDesk(JobStore jobs, EstimateShelf estimates, CatalogueShelf catalogues, SupplierStore suppliers, StockStore stock, OrderStore orders, TimeProvider clock)
{
    /// <summary>The day today.</summary>
    public DateOnly Today => DateOnly.FromDateTime(clock.GetLocalNow().Date);

    /// <summary>What is bought, with the orders of these jobs that are taken off; null where no job has a saved revision.</summary>
    public async Task<(JointOrder Order, ImmutableArray<StoredOrder> Already)?> MakeAsync(OrderAsk ask, CancellationToken token)
    {
        if (await OrderFiles.PapersAsync(ask.Jobs, jobs, estimates, token) is not { Count: > 0 } papers)
        {
            return null;
        }

        var known = await suppliers.ListAsync(token);
        ImmutableArray<StoredOrder> already = [.. (await orders.ForJobsAsync(ask.Jobs, token)).Where(o => o.Order.State is not OrderState.Cancelled)];
        var shelf = ask.Shelf ? (await stock.LoadAsync(token)).ToStock() : StockOnHand.Empty;
        var catalogue = catalogues.Current;
        var had = OrderedStock.With(shelf, already.Select(o => ($"Order {o.Number}", o.Order)), catalogue.Parts);
        var order = await Task.Run(() => JointOrder.Of(papers, catalogue, ask, had, [.. known.Select(Terms)], Today), token);
        return (order with { OrdersTakenOff = !already.IsEmpty }, already);
    }

    /// <summary>Writes an order for each supplier, as drafts, all or none. A supplier of whom a price is known by name alone is added.</summary>
    /// <param name="order">What is bought; divided among suppliers.</param>
    /// <param name="ask">For which phase.</param>
    /// <param name="needBy">The day by which it is needed; null where none was said.</param>
    /// <param name="token">Ends the wait.</param>
    public async Task<ImmutableArray<StoredOrder>> WriteAsync(JointOrder order, OrderAsk ask, DateOnly? needBy, CancellationToken token)
    {
        var known = (await suppliers.ListAsync(token)).ToDictionary(s => s.Name, StringComparer.Ordinal);
        List<StoredOrder> drafts = [];
        foreach (var part in order.Way!.Choice.Orders)
        {
            if (!known.TryGetValue(part.Supplier, out var supplier))
            {
                var saving = await suppliers.SaveAsync(new Supplier { Name = part.Supplier }, token);
                supplier = saving.Stored;
            }

            drafts.Add(Draft(order, ask, needBy, part, supplier));
        }

        return await orders.CreateAsync([.. drafts.Where(d => !d.Order.Lines.IsEmpty)], token);
    }

    private static StoredOrder Draft(JointOrder order, OrderAsk ask, DateOnly? needBy, SupplierOrder part, Supplier supplier) => new()
    {
        SupplierId = supplier.Id,
        Supplier = supplier.Name,
        Jobs = [.. order.Papers.Select(p => (p.Saved.Job.Id, p.Saved.Job.Name))],
        Phase = ask.Phase,
        NeedBy = needBy,
        Way = supplier.Way,
        Note = part.FillUp > Money.Zero ? $"{American.Dollars(part.FillUp.ToDollars())} short of this supplier's smallest order: add what you use anyway, or expect a charge." : "",
        Who = JobDesk.Me,
        Order = new PurchaseOrder(
            [.. order.Plan.Lines.SelectMany(l => l.Packs.Where(p => p.Offer.Supplier == part.Supplier).Select(p => (Line: l, Pack: p)))
                .Select((x, i) => new OrderLine(i + 1, x.Line.ItemId, x.Line.Description, x.Line.Unit, x.Pack.Offer.PackSize, x.Pack.Count, x.Pack.Offer.Price, x.Pack.Offer.Number))],
            [], part.Delivery),
    };

    private static SupplierTerms Terms(Supplier s) => new(s.Name, s.Way == SupplyWay.WillCall ? Money.Zero : s.Delivery, s.Minimum, s.FreeFrom);
}
