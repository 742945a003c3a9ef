using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>A point of the work at which a share of the price is earned, as this job agrees it.</summary>
public sealed record Milestone
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>What is reached, such as "Rough inspection passed".</summary>
    public required string Name { get; init; }

    /// <summary>Its share of the price; the shares add up to all of it.</summary>
    public required Percent SharePercent { get; init; }
}
