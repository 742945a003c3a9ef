using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;

namespace Estimator.Engine.Framing;

/// <summary>A level in canonical pose.</summary>
public sealed record FramedLevel
{
    /// <summary>Place from the lowest, from 0.</summary>
    public required int Index { get; init; }

    /// <summary>What the user stated.</summary>
    public required Level Source { get; init; }

    /// <summary>Its floor above the lowest floor, in sixteenths.</summary>
    public required int Elevation { get; init; }

    /// <summary>Its rooms by index.</summary>
    public required ImmutableArray<int> Rooms { get; init; }

    /// <summary>Whether ceiling joists run along the canonical x axis.</summary>
    public required bool JoistsAlongX { get; init; }

    /// <summary>Stud spacing.</summary>
    public required Fact StudSpacing { get; init; }

    /// <summary>Stud depth, the way a hole is bored across.</summary>
    public required Fact StudDepth { get; init; }

    /// <summary>Joist spacing.</summary>
    public required Fact JoistSpacing { get; init; }

    /// <summary>Whether cable can pass under its floor: a level or a crawl space lies below.</summary>
    public required bool OpenBelow { get; init; }

    /// <summary>The level whose ceiling joists carry this floor; over a crawl space, of whose joists nothing is stated, they are taken to be like its own.</summary>
    public int JoistsUnder => Math.Max(0, Index - 1);
}
