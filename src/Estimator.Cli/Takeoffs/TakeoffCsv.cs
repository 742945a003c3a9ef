using System.Globalization;
using System.Text;
using Estimator.Engine.Takeoff;

namespace Estimator.Cli.Takeoffs;

/// <summary>Writes the takeoff as CSV.</summary>
internal static class TakeoffCsv
{
    internal static string Write(TakeoffResult takeoff)
    {
        var csv = new StringBuilder();
        Csv.Row(csv, "item", "category", "description", "unit", "quantity", "owner_supplied", "where");
        foreach (var line in takeoff.Lines)
        {
            Csv.Row(
                csv, Csv.Text(line.ItemId), Csv.Text(line.Category), Csv.Text(line.Description), line.Unit, line.Quantity.Value.ToString("0.####", CultureInfo.InvariantCulture),
                line.OwnerSupplied ? "yes" : "no", Csv.Text(string.Join("; ", line.Where)));
        }

        return csv.ToString();
    }
}
