namespace Estimator.Engine.House;

/// <summary>What the user made of a sentence of the bid's scope, or added to it.</summary>
public sealed record ScopeEdit
{
    /// <summary>Id of a composed sentence, which it replaces; any other id adds a sentence.</summary>
    public required string Id { get; init; }

    /// <summary>What the sentence says.</summary>
    public required ScopePart Part { get; init; }

    /// <summary>The sentence; empty leaves a composed one out.</summary>
    public string Text { get; init; } = "";
}
