using Estimator.Engine.Takeoff;

namespace Estimator.Cli.Takeoffs;

/// <summary>Writes the takeoff as CSV.</summary>
internal static class TakeoffCsv
{
    private static readonly string[] Columns = ["item", "category", "description", "unit", "quantity", "owner_supplied", "where"];

    internal static string Write(TakeoffResult takeoff) => Csv.Write(Columns, takeoff.Lines.Select(line => (string[])
    [
        line.ItemId, line.Category, line.Description, line.Unit, Csv.Number(line.Quantity.Value), line.OwnerSupplied ? "yes" : "no", string.Join("; ", line.Where),
    ]));
}
