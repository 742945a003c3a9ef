using Estimator.Engine.Explanations;

namespace Estimator.Engine.Takeoff;

/// <summary>Feet of a cable in places out of the ordinary; a part of the item's line.</summary>
/// <param name="ItemId">The cable.</param>
/// <param name="Place">Where it is pulled.</param>
/// <param name="Feet">How much.</param>
public sealed record PlacedCable(string ItemId, WorkPlace Place, Fact Feet);
