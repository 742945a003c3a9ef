namespace Estimator.Engine.House;

/// <summary>How a counter stands.</summary>
public enum CounterKind
{
    /// <summary>Against a wall.</summary>
    Wall = 1,

    /// <summary>Free in the room.</summary>
    Island,

    /// <summary>Free but for one end.</summary>
    Peninsula,
}
