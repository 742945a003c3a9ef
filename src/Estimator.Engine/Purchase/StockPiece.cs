using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase;

/// <summary>A partial coil or reel on the shelf.</summary>
/// <param name="ItemId">The cable.</param>
/// <param name="Label">What the firm calls it, so that the crew finds it.</param>
/// <param name="Length">What is on it.</param>
public sealed record StockPiece(string ItemId, string Label, Length Length);
