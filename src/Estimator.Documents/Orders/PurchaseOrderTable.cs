using Estimator.Documents.Tables;

namespace Estimator.Documents.Orders;

/// <summary>A purchase order as CSV, a row a line.</summary>
public static class PurchaseOrderTable
{
    /// <summary>The table; the delivery is in no row.</summary>
    /// <param name="paper">The order.</param>
    public static string Write(OrderPaper paper)
    {
        ArgumentNullException.ThrowIfNull(paper);
        return Csv.Write(
            ["order", "line", "supplier_number", "item", "description", "packs", "pack_size", "unit", "pack_price_usd", "cost_usd", "received", "back_ordered", "cancelled", "returned"],
            paper.Order.Standing.Select(l => (CsvCell[])
            [
                paper.Number, Csv.Number(l.Line.Line), l.Line.Number, l.Line.Item, l.Line.Description, Csv.Number(l.Line.Packs), Csv.Number(l.Line.PackSize), l.Line.Unit, Csv.Number(l.Line.PackPrice.ToDollars()),
                Csv.Number(l.Line.CostOf(l.Line.Packs - l.Cancelled).ToDollars()), Csv.Number(l.Received), Csv.Number(l.BackOrdered), Csv.Number(l.Cancelled), Csv.Number(l.Returned),
            ]));
    }
}
