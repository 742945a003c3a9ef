using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>A room: a rectangle by two sizes, or a polygon on its level's grid, measured to the inside of its walls.</summary>
public sealed record Room
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>What people call it.</summary>
    public string Name { get; init; } = "";

    /// <summary>What it is used for; the rules of layout, GFCI and AFCI turn on it.</summary>
    public required RoomKind Kind { get; init; }

    /// <summary>The building that it is in; null for the house.</summary>
    public string? Building { get; init; }

    /// <summary>Two sides of a rectangle; null where <see cref="Corners"/> are given.</summary>
    public RectangleSize? Size { get; init; }

    /// <summary>Lower-left corner of the rectangle on the grid; null lets the program arrange the room, which it says.</summary>
    public GridPoint? At { get; init; }

    /// <summary>Whether <see cref="At"/> is where the program arranged the room, kept so that later rooms don't move it; the layout stays assumed.</summary>
    public bool PlaceAssumed { get; init; }

    /// <summary>Corners in order round the room, first not repeated; empty where <see cref="Size"/> is given.</summary>
    public ImmutableArray<GridPoint> Corners { get; init; } = [];

    /// <summary>Holes such as a shaft inside the room, each by its corners.</summary>
    public ImmutableArray<ImmutableArray<GridPoint>> Holes { get; init; } = [];

    /// <summary>Floor to ceiling; null follows the level.</summary>
    public Length? CeilingHeight { get; init; }

    /// <summary>Whether studs can be bored or cable must be fished.</summary>
    public WallState Walls { get; init; } = WallState.Open;

    /// <summary>What its walls are made of; null is wood studs.</summary>
    public WallBuild? WallBuild { get; init; }

    /// <summary>How conductors are run to its boxes; null as the firm's practice has it.</summary>
    public WiringMethod? WiringMethod { get; init; }

    /// <summary>Whether the room is finished as living space; matters in basements and attics.</summary>
    public bool Finished { get; init; } = true;

    /// <summary>Devices by number; the Layout stage finds their places.</summary>
    public ImmutableArray<DeviceCount> Counts { get; init; } = [];

    /// <summary>Devices that the user put in their place.</summary>
    public ImmutableArray<PlacedDevice> Placed { get; init; } = [];

    /// <summary>Sinks, tubs, showers and other fixtures that rules measure from.</summary>
    public ImmutableArray<Fixture> Fixtures { get; init; } = [];

    /// <summary>Counters and work surfaces.</summary>
    public ImmutableArray<Counter> Counters { get; init; } = [];
}
