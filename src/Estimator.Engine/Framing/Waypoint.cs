using Estimator.Engine.Measures;

namespace Estimator.Engine.Framing;

/// <summary>A point where a run turns.</summary>
/// <param name="Level">Index of the level.</param>
/// <param name="Spot">The point in canonical pose.</param>
/// <param name="Height">Above that level's floor, in sixteenths; below zero is under the floor.</param>
public readonly record struct Waypoint(int Level, PlanPoint Spot, int Height);
