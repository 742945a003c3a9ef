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

    /// <summary>Size of its ungrounded conductors; null lets the engine choose, with voltage drop in mind.</summary>
    public WireSize? Wire { get; init; }

    /// <summary>Where its ground-fault protection sits; null follows the firm's practice.</summary>
    public GroundFaultBy? GroundFaultBy { get; init; }

    /// <summary>The pinned circuit whose breaker of two poles, home run and neutral it shares: it leaves in that circuit's first box.</summary>
    public string? SharesNeutralWith { get; init; }

    /// <summary>Outlets by device or equipment id; switches follow what they control, and one that controls nothing is named.</summary>
    public required ImmutableArray<string> Outlets { get; init; }

    /// <summary>Its feeding runs in the order of the boxes; empty lets the engine choose the order.</summary>
    public ImmutableArray<PinnedRun> Runs { get; init; } = [];

    /// <summary>Whether outlets that come later may join it, as far as its breaker and the firm's practice go.</summary>
    public bool TakesMore { get; init; }
}
