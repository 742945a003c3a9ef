namespace Estimator.Engine.Purchase.PriceFiles;

/// <summary>What a column of a supplier's price file says.</summary>
public enum PriceColumn
{
    /// <summary>Id of our catalogue item.</summary>
    Item = 1,

    /// <summary>The supplier's own item number.</summary>
    Number,

    /// <summary>Global trade item number.</summary>
    Gtin,

    /// <summary>What it is.</summary>
    Description,

    /// <summary>The price, for as many units as the unit column says.</summary>
    Price,

    /// <summary>What the price is for: each, hundred, thousand, foot, coil of 250 ft, box of 100.</summary>
    PricedBy,

    /// <summary>Pieces in the pack that is sold, or feet of the coil.</summary>
    PackSize,

    /// <summary>The day of the price.</summary>
    QuotedOn,

    /// <summary>The last day on which the price stands.</summary>
    ExpiresOn,

    /// <summary>Make of panel that a breaker is listed for.</summary>
    Make,

    /// <summary>Series of that make.</summary>
    Series,
}
