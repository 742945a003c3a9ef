namespace Estimator.Engine.House;

/// <summary>A local change to the code.</summary>
public sealed record Amendment
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>What it does to the rule.</summary>
    public required AmendmentKind Kind { get; init; }

    /// <summary>The rule it changes, by the code of its finding, such as <c>receptacle-spacing</c>; for an added rule, a name.</summary>
    public required string Rule { get; init; }

    /// <summary>The figure that takes the place of the edition's, in the rule's own unit.</summary>
    public decimal? Value { get; init; }

    /// <summary>The wiring method that is forced, for <see cref="AmendmentKind.WiringMethod"/>.</summary>
    public WiringMethod? WiringMethod { get; init; }

    /// <summary>What it says, in plain words, and where it was read.</summary>
    public string Text { get; init; } = "";
}
