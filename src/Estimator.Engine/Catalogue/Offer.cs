using Estimator.Engine.Measures;

namespace Estimator.Engine.Catalogue;

/// <summary>A pack of an item at a price.</summary>
/// <param name="Item">The item.</param>
/// <param name="Supplier">Who offers it.</param>
/// <param name="PackSize">Units in the pack: pieces, or feet of a coil.</param>
/// <param name="Price">Price of the pack.</param>
/// <param name="Note">Where the price comes from.</param>
public sealed record Offer(string Item, string Supplier, int PackSize, Money Price, string Note)
{
    /// <summary>Units in the largest pack.</summary>
    public const int LargestPack = 100_000;

    /// <summary>Highest price of a pack, in dollars.</summary>
    public const int HighestDollars = 1_000_000;

    /// <summary>The supplier's own item number; empty where it is not known.</summary>
    public string Number { get; init; } = "";

    /// <summary>Global trade item number, as fourteen digits; empty where it is not known.</summary>
    public string Gtin { get; init; } = "";

    /// <summary>The day that the price was asked or quoted; null where it is not known.</summary>
    public DateOnly? QuotedOn { get; init; }

    /// <summary>The last day on which the quote stands; null where no end was said.</summary>
    public DateOnly? ExpiresOn { get; init; }

    /// <summary>Make of panel that a breaker is listed for; empty where the offer does not say.</summary>
    public string Make { get; init; } = "";

    /// <summary>Series of that make; empty where the offer does not say.</summary>
    public string Series { get; init; } = "";

    /// <summary>Whether the quote has ended.</summary>
    /// <param name="today">The day on which it is used.</param>
    public bool IsExpired(DateOnly today) => ExpiresOn < today;

    /// <summary>Whether the price is invented and stands there only until a real one does: its note says so.</summary>
    public bool IsSample => Note.Contains("sample", StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether the supplier takes back an unopened pack.</summary>
    public bool Returnable { get; init; } = true;
}
