using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Wiring.Boxes;

/// <summary>What is counted in a box.</summary>
public sealed record BoxContents
{
    /// <summary>Insulated conductors that enter, by size; pigtails that never leave the box are not counted.</summary>
    public ImmutableArray<(WireSize Size, int Count)> Conductors { get; init; } = [];

    /// <summary>Equipment grounding conductors that enter, by size.</summary>
    public ImmutableArray<(WireSize Size, int Count)> Grounds { get; init; } = [];

    /// <summary>Isolated grounding conductors, by size.</summary>
    public ImmutableArray<(WireSize Size, int Count)> IsolatedGrounds { get; init; } = [];

    /// <summary>Each yoke: the largest conductor on it, and the gangs that its device needs.</summary>
    public ImmutableArray<(WireSize Size, int Gangs)> Yokes { get; init; } = [];

    /// <summary>Terminal blocks, by the largest conductor ended on each.</summary>
    public ImmutableArray<WireSize> TerminalBlocks { get; init; } = [];

    /// <summary>Whether clamps take room inside.</summary>
    public bool InternalClamps { get; init; }

    /// <summary>Luminaire studs.</summary>
    public int LuminaireStuds { get; init; }

    /// <summary>Hickeys.</summary>
    public int Hickeys { get; init; }
}
