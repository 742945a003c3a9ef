using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>A spot on a wall of a room.</summary>
/// <param name="Side">Which side of the outline, 1 for the side from the first corner to the second. A rectangle's sides are south, east, north, west.</param>
/// <param name="Offset">Distance along that side from its first corner.</param>
public sealed record WallSpot(int Side, Length Offset);
