using System.Collections.Immutable;
using Estimator.Engine.Explanations;

namespace Estimator.Engine.Panels;

/// <summary>A panel with every breaker in a space and its legs as even as they can be.</summary>
/// <remarks>What is there stays where it is stated, else where the order of the directory puts it; new one-pole circuits are divided between the legs. Source: NEC 408.4(A), 210.11(B).</remarks>
public sealed record PanelSchedule
{
    /// <summary>The panel.</summary>
    public required string PanelId { get; init; }

    /// <summary>How many spaces it has.</summary>
    public required int Spaces { get; init; }

    /// <summary>The breakers, by their first space.</summary>
    public required ImmutableArray<ScheduledBreaker> Breakers { get; init; }

    /// <summary>Breakers that found no space.</summary>
    public required ImmutableArray<BreakerLoad> Unplaced { get; init; }

    /// <summary>Load on leg A.</summary>
    public required Fact LegAVa { get; init; }

    /// <summary>Load on leg B.</summary>
    public required Fact LegBVa { get; init; }

    /// <summary>How far the legs are apart.</summary>
    public required Fact ImbalanceVa { get; init; }

    /// <summary>No division of the new circuits brings the legs nearer than this, in volt-amperes.</summary>
    public required decimal LowerBoundVa { get; init; }

    /// <summary>Whether the division is proven to be the most even one.</summary>
    public bool Proven => ImbalanceVa.Value == LowerBoundVa;

    /// <summary>What was assumed, sentence by sentence.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>Numbers of the spaces that nothing stands in.</summary>
    public IEnumerable<int> FreeSpaces => Enumerable.Range(1, Spaces).Except(Breakers.SelectMany(b => b.Spaces));
}
