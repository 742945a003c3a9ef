using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>A device that the user put in its place. On a wall by <see cref="Wall"/>, or by a point of the grid; a wall device's point moves to the nearest wall of its room.</summary>
public sealed record PlacedDevice
{
    /// <summary>Stable id, unique in the job.</summary>
    public required string Id { get; init; }

    /// <summary>What.</summary>
    public required DeviceKind Kind { get; init; }

    /// <summary>What it is there for.</summary>
    public ServedPlace Serves { get; init; } = ServedPlace.Room;

    /// <summary>A point of the grid; null where <see cref="Wall"/> is given.</summary>
    public GridPoint? At { get; init; }

    /// <summary>A spot on a wall of the room; null where <see cref="At"/> is given.</summary>
    public WallSpot? Wall { get; init; }

    /// <summary>Box centre above the floor; null follows the practice table.</summary>
    public Length? Height { get; init; }

    /// <summary>Whether the owner supplies it: labor and no material.</summary>
    public bool OwnerSupplied { get; init; }
}
