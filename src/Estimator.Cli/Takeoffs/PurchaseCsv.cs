using Estimator.Engine.Purchase;

namespace Estimator.Cli.Takeoffs;

/// <summary>Writes the purchase list as CSV, one row a pack size.</summary>
internal static class PurchaseCsv
{
    private static readonly string[] Columns =
        ["item", "description", "needed", "unit", "supplier", "pack_size", "packs", "pack_price_usd", "cost_usd", "left_of_item", "note"];

    internal static string Write(PurchasePlan plan) => Csv.Write(Columns, plan.Lines.SelectMany(Rows));

    private static IEnumerable<string[]> Rows(PurchaseLine line)
    {
        string[] item = [line.ItemId, line.Description, Csv.Number(line.Needed.Value), line.Unit];
        return line.Packs.IsEmpty
            ? [[.. item, "", "", "", "", "", "", "no price"]]
            : line.Packs.Select(pack => (string[])
            [
                .. item, pack.Offer.Supplier, Csv.Number(pack.Offer.PackSize), Csv.Number(pack.Count), Csv.Number(pack.Offer.Price.ToDollars()),
                Csv.Number((pack.Offer.Price * pack.Count).ToDollars()), Csv.Number(line.Left), pack.Offer.Note,
            ]);
    }
}
