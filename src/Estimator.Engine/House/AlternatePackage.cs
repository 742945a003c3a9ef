using System.Collections.Immutable;

namespace Estimator.Engine.House;

/// <summary>Alternates that are offered together under a name, such as good, better and best.</summary>
public sealed record AlternatePackage
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>Ids of its alternates, made in the order of the job.</summary>
    public ImmutableArray<string> Alternates { get; init; } = [];
}
