using Estimator.Engine.Explanations;
using Estimator.Engine.Framing;
using Estimator.Engine.House;

namespace Estimator.Engine.Layout;

/// <summary>A piece of equipment in its place, with what the user left out filled from the equipment table.</summary>
public sealed record LaidEquipment
{
    /// <summary>Index in the job's list of equipment.</summary>
    public required int Index { get; init; }

    /// <summary>What the user stated.</summary>
    public required Equipment Source { get; init; }

    /// <summary>Where its outlet is.</summary>
    public required Placement Place { get; init; }

    /// <summary>Nominal supply, 120 or 240 V.</summary>
    public required Fact Volts { get; init; }

    /// <summary>Load.</summary>
    public required Fact LoadVa { get; init; }

    /// <summary>How it is connected.</summary>
    public required Connection Connection { get; init; }

    /// <summary>Whether it has a circuit of its own.</summary>
    public required bool OwnCircuit { get; init; }
}
