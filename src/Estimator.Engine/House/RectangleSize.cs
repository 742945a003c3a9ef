using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>The two sides of a rectangular room.</summary>
/// <param name="Width">Along the grid's x axis.</param>
/// <param name="Depth">Along the grid's y axis.</param>
public sealed record RectangleSize(Length Width, Length Depth);
