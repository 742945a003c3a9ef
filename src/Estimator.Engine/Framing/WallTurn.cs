using Estimator.Engine.Measures;

namespace Estimator.Engine.Framing;

/// <summary>A spot on a wall where a way along walls turns or goes through the wall.</summary>
/// <param name="Spot">The point in canonical pose.</param>
/// <param name="Room">Index of the room.</param>
/// <param name="Side">Side of its outline.</param>
/// <param name="Offset">Along that side from its first corner, in sixteenths.</param>
internal readonly record struct WallTurn(PlanPoint Spot, int Room, int Side, int Offset);
