using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>A circuit that a panel already carries.</summary>
public sealed record ExistingCircuit
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>What the directory says.</summary>
    public string Name { get; init; } = "";

    /// <summary>Breaker rating, in amperes.</summary>
    public required Current BreakerA { get; init; }

    /// <summary>Number of the space that its breaker takes, the upper one of a two-pole breaker; null when not read off the door.</summary>
    public int? Space { get; init; }

    /// <summary>1 or 2.</summary>
    public int Poles { get; init; } = 1;

    /// <summary>Whether it sits in half a space, as one side of a tandem.</summary>
    public bool Tandem { get; init; }

    /// <summary>Whether it gets half of a new tandem breaker in this job.</summary>
    public bool NewTandem { get; init; }

    /// <summary>The panel that it is moved to in this job; null where it stays.</summary>
    public string? MovedTo { get; init; }

    /// <summary>Load for the load calculation, in volt-amperes; null when it counts as general lighting and receptacles.</summary>
    public Power? LoadVa { get; init; }
}
