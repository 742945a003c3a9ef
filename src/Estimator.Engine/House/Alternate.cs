using System.Collections.Immutable;

namespace Estimator.Engine.House;

/// <summary>Something that the customer may take or leave: changes of the job that are not in its price. Its number is its place in the list.</summary>
public sealed record Alternate
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>What it is, as the customer reads it.</summary>
    public required string Name { get; init; }

    /// <summary>The changes, each in the form in which edits are kept, as JSON text.</summary>
    public ImmutableArray<string> Changes { get; init; } = [];
}
