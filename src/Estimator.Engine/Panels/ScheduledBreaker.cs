using System.Collections.Immutable;

namespace Estimator.Engine.Panels;

/// <summary>A breaker in its place.</summary>
/// <param name="Breaker">The breaker.</param>
/// <param name="Spaces">Numbers of the spaces that it takes: odd on the left, even on the right.</param>
/// <param name="Leg">The leg that it loads.</param>
/// <param name="Half">Whether it shares its space with another, as half of a tandem.</param>
public sealed record ScheduledBreaker(BreakerLoad Breaker, ImmutableArray<int> Spaces, PanelLeg Leg, bool Half);
