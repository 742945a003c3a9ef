using System.Globalization;
using System.Text;
using Estimator.Engine.Purchase;

namespace Estimator.Cli.Takeoffs;

/// <summary>Writes the purchase list as CSV, one row a pack size.</summary>
internal static class PurchaseCsv
{
    internal static string Write(PurchasePlan plan)
    {
        var csv = new StringBuilder();
        Csv.Row(csv, "item", "description", "needed", "unit", "supplier", "pack_size", "packs", "pack_price_usd", "cost_usd", "left_of_item", "note");
        foreach (var line in plan.Lines)
        {
            if (line.Packs.IsEmpty)
            {
                Csv.Row(csv, Csv.Text(line.ItemId), Csv.Text(line.Description), Number(line.Needed.Value), line.Unit, "", "", "", "", "", "", "no price");
            }

            foreach (var pack in line.Packs)
            {
                Csv.Row(
                    csv, Csv.Text(line.ItemId), Csv.Text(line.Description), Number(line.Needed.Value), line.Unit, Csv.Text(pack.Offer.Supplier), Number(pack.Offer.PackSize),
                    Number(pack.Count), Number(pack.Offer.Price.ToDollars()), Number((pack.Offer.Price * pack.Count).ToDollars()), Number(line.Left), Csv.Text(pack.Offer.Note));
            }
        }

        return csv.ToString();
    }

    private static string Number(decimal value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
