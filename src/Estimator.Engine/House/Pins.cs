using System.Collections.Immutable;

namespace Estimator.Engine.House;

/// <summary>Choices of the engine that the user overruled.</summary>
public sealed record Pins
{
    /// <summary>Circuits whose outlets and runs stay as stated.</summary>
    public ImmutableArray<PinnedCircuit> Circuits { get; init; } = [];

    /// <summary>How the house lay when its wiring was frozen; null lets the engine choose.</summary>
    public PinnedPose? Pose { get; init; }
}
