namespace Estimator.Engine.Purchase.PriceFiles;

/// <summary>What a price file does to the price of a pack.</summary>
public enum PackChangeKind
{
    /// <summary>The supplier had no price for the pack.</summary>
    New = 1,

    /// <summary>Another price than before.</summary>
    Changed,

    /// <summary>The price of before.</summary>
    Unchanged,

    /// <summary>The file does not name the pack.</summary>
    Gone,
}
