using System.Collections.Immutable;

namespace Estimator.Engine.Upgrades;

/// <summary>A way to give a panel room, with the job worked out whole as it would then be.</summary>
/// <param name="Upgrade">The way.</param>
/// <param name="After">The estimate with it.</param>
/// <param name="Added">What it adds to the takeoff, and what it takes away, without what every bid counts by circuit.</param>
public sealed record PricedUpgrade(PanelUpgrade Upgrade, JobEstimate After, ImmutableArray<AddedPart> Added);
