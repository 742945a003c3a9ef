using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;
using Estimator.Engine.Panels;
using Estimator.Engine.Wiring.Joints;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>A branch circuit.</summary>
public sealed record Circuit
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>What the directory says.</summary>
    public required string Name { get; init; }

    /// <summary>Index of its panel in the layout.</summary>
    public required int Panel { get; init; }

    /// <summary>Why it exists.</summary>
    public required CircuitKind Kind { get; init; }

    /// <summary>Breaker rating, in amperes.</summary>
    public required Fact BreakerA { get; init; }

    /// <summary>1 or 2.</summary>
    public required int Poles { get; init; }

    /// <summary>What the breaker protects against besides overcurrent.</summary>
    public required Protection Protection { get; init; }

    /// <summary>Whether ground-fault protection of the rest sits in its first receptacle.</summary>
    public required bool FirstReceptacleProtects { get; init; }

    /// <summary>Size of its ungrounded conductors.</summary>
    public required WireSize Wire { get; init; }

    /// <summary>Indexes of its boxes, the first in chain first.</summary>
    public required ImmutableArray<int> Boxes { get; init; }

    /// <summary>Indexes of its runs, home run first.</summary>
    public required ImmutableArray<int> Runs { get; init; }

    /// <summary>Where the conductors of its home runs end in the panel.</summary>
    public required ImmutableArray<PanelEnd> PanelEnds { get; init; }

    /// <summary>Outlets on it: receptacles, lights, fans, alarms, equipment; switches are none.</summary>
    public required int Outlets { get; init; }

    /// <summary>The other circuit of a multiwire circuit: both share a two-pole breaker, a home run and its neutral. Null where it stands alone.</summary>
    public int? SharesNeutralWith { get; init; }

    /// <summary>Whether it leaves the common home run in the first box of the other circuit; its first run comes from there.</summary>
    public bool LeavesCommonHomeRun { get; init; }

    /// <summary>Poles of the breaker that it brings: the first circuit of a pair brings two, the other none.</summary>
    public int BreakerPoles => SharesNeutralWith is null ? Poles : LeavesCommonHomeRun ? 0 : 2;

    /// <summary>Load that the plan counts on it.</summary>
    public required Fact LoadVa { get; init; }

    /// <summary>Voltage drop at its farthest outlet, in percent.</summary>
    public required Fact VoltageDropPercent { get; init; }

    /// <summary>Whether the user pinned it.</summary>
    public required bool Pinned { get; init; }
}
