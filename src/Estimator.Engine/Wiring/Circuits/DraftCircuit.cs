using System.Collections.Immutable;
using Estimator.Engine.Measures;
using Estimator.Engine.Panels;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>A circuit as the search leaves it: units, feed and protection, before runs and boxes are made.</summary>
/// <param name="Group">The group it belongs to.</param>
/// <param name="Rating">Breaker and conductors.</param>
/// <param name="Wire">Size of the ungrounded conductors; thicker than the rating asks where voltage drop does.</param>
/// <param name="Units">Its units.</param>
/// <param name="Feed">How they are fed.</param>
/// <param name="Protection">What the breaker protects against.</param>
/// <param name="GroundFault">Where ground-fault protection sits.</param>
/// <param name="CostE4">Planning cost of breaker and feed, in ten-thousandths of a dollar.</param>
internal sealed record DraftCircuit(
    WiringGroup Group,
    CircuitRating Rating,
    WireSize Wire,
    ImmutableArray<WiringUnit> Units,
    FeedTree Feed,
    Protection Protection,
    ProtectedBy GroundFault,
    long CostE4)
{
    /// <summary>What it shares with another circuit; null where it has a home run and a neutral of its own.</summary>
    internal SharedHomeRun? Shared { get; init; }

    /// <summary>Poles of the breaker that it brings: two for both circuits of a pair, which the second then brings none of.</summary>
    internal int BreakerPoles => Shared is not { } shared ? Rating.Poles : shared.JoinedAt is null ? 2 : 0;
}
