using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;

namespace Estimator.Data.Prices;

/// <summary>What a supplier near the company asks for a pack of an item.</summary>
public sealed record LocalPrice
{
    /// <summary>Id of the catalogue item.</summary>
    public required string Item { get; init; }

    /// <summary>Who asks it.</summary>
    public required string Supplier { get; init; }

    /// <summary>Units in the pack: pieces, or feet of a coil.</summary>
    public required int PackSize { get; init; }

    /// <summary>Price of the pack.</summary>
    public required Money Price { get; init; }

    /// <summary>The day that the price was asked or paid.</summary>
    public required DateOnly AsOf { get; init; }

    /// <summary>Where it comes from: a quote, a receipt.</summary>
    public string Note { get; init; } = "";

    /// <summary>Version that it was read at; 0 for a new one.</summary>
    public int Version { get; init; }

    /// <summary>As an offer of the catalogue.</summary>
    public Offer ToOffer() => new(Item, Supplier, PackSize, Price, FormattableString.Invariant($"as of {AsOf:yyyy-MM-dd}{(Note.Length > 0 ? $": {Note}" : "")}")) { QuotedOn = AsOf };
}
