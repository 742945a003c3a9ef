using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>Money set aside for what the customer has still to choose, such as luminaires; the difference is settled when it is known.</summary>
public sealed record Allowance
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>For what, and whether hours are in it.</summary>
    public string Text { get; init; } = "";

    /// <summary>The sum.</summary>
    public required Money Amount { get; init; }
}
