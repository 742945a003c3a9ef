using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Framing;
using Estimator.Engine.Wiring.Joints;

namespace Estimator.Engine.Wiring.Routing;

/// <summary>One continuous piece of cable.</summary>
public sealed record Run
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>Index of its circuit.</summary>
    public required int Circuit { get; init; }

    /// <summary>The box it leaves; -1 for the panel.</summary>
    public required int From { get; init; }

    /// <summary>The box it enters.</summary>
    public required int To { get; init; }

    /// <summary>What it carries.</summary>
    public required RunRole Role { get; init; }

    /// <summary>The cable.</summary>
    public required CableType Cable { get; init; }

    /// <summary>Its conductors, the bare one last.</summary>
    public required ImmutableArray<CableConductor> Conductors { get; init; }

    /// <summary>The way through the framing.</summary>
    public required RunPath Path { get; init; }

    /// <summary>Cable left at both ends.</summary>
    public required Fact MakeUp { get; init; }

    /// <summary>Slack on the path.</summary>
    public required Fact Slack { get; init; }

    /// <summary>Path, rises and drops, make-up and slack together: the piece to cut.</summary>
    public required Fact Total { get; init; }

    /// <summary>Whether it is fished through finished walls.</summary>
    public required bool Fished { get; init; }
}
