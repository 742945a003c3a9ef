using Estimator.Data.Suppliers;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase.PriceFiles;
using Estimator.Web.Figures;

namespace Estimator.Web.Suppliers;

/// <summary>Words for suppliers and their price files.</summary>
public static class SupplierWords
{
    /// <summary>How goods come.</summary>
    public static string Of(SupplyWay way) => way switch
    {
        SupplyWay.Delivery => "Delivery",
        SupplyWay.WillCall => "Will-call",
        _ => throw new ArgumentOutOfRangeException(nameof(way), way, "There is no such way."),
    };

    /// <summary>What a delivery costs and what an order must come to.</summary>
    public static string Terms(Supplier supplier)
    {
        var delivery = supplier.Way == SupplyWay.WillCall ? "fetched at the counter"
            : supplier.Delivery == Money.Zero ? "free delivery"
            : $"{American.Dollars(supplier.Delivery.ToDollars())} a delivery{(supplier.FreeFrom is { } free ? $", free from {American.Dollars(free.ToDollars())}" : "")}";
        return supplier.Minimum == Money.Zero ? delivery : $"{delivery}, orders from {American.Dollars(supplier.Minimum.ToDollars())}";
    }

    /// <summary>What a column of a price file says.</summary>
    public static string Of(PriceColumn column) => column switch
    {
        PriceColumn.Item => "Our item id",
        PriceColumn.Number => "Supplier's item number",
        PriceColumn.Gtin => "GTIN (bar code)",
        PriceColumn.Description => "Description",
        PriceColumn.Price => "Price",
        PriceColumn.PricedBy => "Price is per",
        PriceColumn.PackSize => "Pieces or feet in a pack",
        PriceColumn.QuotedOn => "Day of the price",
        PriceColumn.ExpiresOn => "Last day of the price",
        PriceColumn.Make => "Breaker fits make",
        PriceColumn.Series => "Breaker fits series",
        _ => throw new ArgumentOutOfRangeException(nameof(column), column, "There is no such column."),
    };

    /// <summary>What a price file does.</summary>
    public static string Of(PackChangeKind kind) => kind switch
    {
        PackChangeKind.New => "New",
        PackChangeKind.Changed => "Changed",
        PackChangeKind.Unchanged => "Unchanged",
        PackChangeKind.Gone => "Not in the file",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "There is no such kind."),
    };

    /// <summary>How old a price is.</summary>
    public static string Age(DateOnly quotedOn, DateOnly today) => (today.DayNumber - quotedOn.DayNumber) switch { < 0 => $"from {American.Day(quotedOn)}", 0 => "today", var days => $"{American.Count(days, "day")} old" };

    /// <summary>A pack.</summary>
    public static string Pack(string unit, int size) => unit == "foot" ? $"{American.Number(size)} ft" : size == 1 ? "each" : $"{American.Number(size)} a pack";
}
