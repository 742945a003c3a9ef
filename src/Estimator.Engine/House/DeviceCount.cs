namespace Estimator.Engine.House;

/// <summary>So many devices of one kind in a room, places to be found by the Layout stage.</summary>
public sealed record DeviceCount
{
    /// <summary>What.</summary>
    public required DeviceKind Kind { get; init; }

    /// <summary>How many, 0 to 200.</summary>
    public required int Count { get; init; }

    /// <summary>What they are there for.</summary>
    public ServedPlace Serves { get; init; } = ServedPlace.Room;
}
