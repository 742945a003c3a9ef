using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase.PriceFiles;

/// <summary>What a supplier asked for a pack until now.</summary>
/// <param name="Item">The item.</param>
/// <param name="PackSize">Pieces or feet in the pack.</param>
/// <param name="Price">Price of the pack.</param>
public sealed record KnownPrice(string Item, int PackSize, Money Price);
