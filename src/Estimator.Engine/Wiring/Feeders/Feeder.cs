using Estimator.Engine.Explanations;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Wiring.Feeders;

/// <summary>The cable from a panel to one that it feeds: two hot conductors, a neutral kept apart from the grounding conductor, and that one.</summary>
public sealed record Feeder
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>The panel that feeds.</summary>
    public required string From { get; init; }

    /// <summary>The panel that is fed.</summary>
    public required string To { get; init; }

    /// <summary>Rating of its breaker, in amperes.</summary>
    public required Fact BreakerA { get; init; }

    /// <summary>Size of its hot conductors and its neutral.</summary>
    public required WireSize Wire { get; init; }

    /// <summary>Size of its grounding conductor at least.</summary>
    public required WireSize Ground { get; init; }

    /// <summary>Metal of its conductors.</summary>
    public required ConductorMetal Metal { get; init; }

    /// <summary>What its conductors carry, in amperes.</summary>
    public required Fact AmpacityA { get; init; }

    /// <summary>How its conductors are brought along; service-entrance cable counts as nonmetallic.</summary>
    public required WiringMethod Method { get; init; }

    /// <summary>The catalogue item of its cable, or of its conductors in a raceway.</summary>
    public required string ItemId { get; init; }

    /// <summary>The cable as the trade calls it.</summary>
    public required string CableName { get; init; }

    /// <summary>The way through the framing.</summary>
    public required RunPath Path { get; init; }

    /// <summary>Path, what is left at both panels, and slack: the piece to cut.</summary>
    public required Fact Total { get; init; }

    /// <summary>Whether it is fished through finished walls.</summary>
    public required bool Fished { get; init; }
}
