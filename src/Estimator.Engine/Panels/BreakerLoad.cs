using Estimator.Engine.Explanations;

namespace Estimator.Engine.Panels;

/// <summary>A breaker that wants a place in a panel.</summary>
/// <param name="Id">Stable id of its circuit, or of the panel that it feeds.</param>
/// <param name="Name">What the directory says.</param>
/// <param name="Origin">Where it comes from.</param>
/// <param name="BreakerA">Rating, in amperes.</param>
/// <param name="Poles">1 or 2.</param>
/// <param name="LoadVa">Load that its legs carry, in whole volt-amperes.</param>
/// <param name="Space">Number of the space that it keeps; null where none is stated.</param>
/// <param name="Tandem">Whether it is half of a tandem.</param>
public sealed record BreakerLoad(string Id, string Name, BreakerOrigin Origin, decimal BreakerA, int Poles, Fact LoadVa, int? Space = null, bool Tandem = false);
