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
    /// <summary>Whether the price is invented and stands there only until a real one does: its note says so.</summary>
    public bool IsSample => Note.Contains("sample", StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether the supplier takes back an unopened pack.</summary>
    public bool Returnable { get; init; } = true;
}
