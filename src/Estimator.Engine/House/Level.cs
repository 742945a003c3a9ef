using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>One storey: its rooms lie on a grid that all levels of the house share.</summary>
public sealed record Level
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>What people call it.</summary>
    public string Name { get; init; } = "";

    /// <summary>Height of the floor above the lowest level's floor.</summary>
    public Length Elevation { get; init; }

    /// <summary>Whether it is a basement; the rules on basements then hold for all its rooms.</summary>
    public bool Basement { get; init; }

    /// <summary>Floor to ceiling, where a room does not say otherwise.</summary>
    public Length CeilingHeight { get; init; } = Length.FromFeet(8);

    /// <summary>How walls and ceilings are framed.</summary>
    public LevelFraming Framing { get; init; } = new();

    /// <summary>Rooms.</summary>
    public ImmutableArray<Room> Rooms { get; init; } = [];

    /// <summary>Doors, windows and other breaks in walls.</summary>
    public ImmutableArray<Opening> Openings { get; init; } = [];
}
