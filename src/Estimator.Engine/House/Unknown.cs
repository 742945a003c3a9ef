using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>Something that a walk-through left open.</summary>
public sealed record Unknown
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>What it is about.</summary>
    public required UnknownTopic Topic { get; init; }

    /// <summary>The room it is about; null for the whole house.</summary>
    public string? Room { get; init; }

    /// <summary>In plain words.</summary>
    public string Text { get; init; } = "";

    /// <summary>Money set aside for it.</summary>
    public Money? Allowance { get; init; }
}
