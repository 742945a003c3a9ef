using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>A circuit that stays as the user, or an earlier plan, stated it.</summary>
public sealed record PinnedCircuit
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>The panel it starts from.</summary>
    public required string Panel { get; init; }

    /// <summary>Breaker rating in amperes; null lets the engine choose.</summary>
    public Current? BreakerA { get; init; }

    /// <summary>Outlets by device or equipment id; switches follow what they control.</summary>
    public required ImmutableArray<string> Outlets { get; init; }

    /// <summary>Its feeding runs in the order of the boxes; empty lets the engine choose the order.</summary>
    public ImmutableArray<PinnedRun> Runs { get; init; } = [];
}
