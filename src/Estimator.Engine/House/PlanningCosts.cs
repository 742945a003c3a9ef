using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>Costs that the wiring is optimised on, kept in the job so that new prices never move a cable. Each value left out follows the planning-cost table.</summary>
public sealed record PlanningCosts
{
    /// <summary>A foot of two-wire cable, 14 AWG; thicker and three-wire cable in the table's proportion.</summary>
    public Money? CablePerFoot { get; init; }

    /// <summary>A bored hole.</summary>
    public Money? Bore { get; init; }

    /// <summary>A single-gang box.</summary>
    public Money? Box { get; init; }

    /// <summary>A plain one-pole breaker.</summary>
    public Money? Breaker { get; init; }

    /// <summary>An hour of work.</summary>
    public Money? Hour { get; init; }
}
