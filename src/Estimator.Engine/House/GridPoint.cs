using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>A point on the grid that all levels share. In a file it is a pair: <c>["12' 6\"", "0'"]</c>.</summary>
/// <param name="X">East of the origin.</param>
/// <param name="Y">North of the origin.</param>
public readonly record struct GridPoint(Length X, Length Y);
