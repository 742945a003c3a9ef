namespace Estimator.Engine.Layout;

/// <summary>A stretch of a room's walls that no doorway breaks, measured round corners.</summary>
/// <param name="From">Start along the room's outline from its first corner, in sixteenths.</param>
/// <param name="Length">Length, in sixteenths.</param>
/// <param name="Closed">Whether it runs all round the room.</param>
public readonly record struct WallSpace(int From, int Length, bool Closed);
