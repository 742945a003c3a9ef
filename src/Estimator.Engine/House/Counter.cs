using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>A counter or work surface.</summary>
public sealed record Counter
{
    /// <summary>How it stands.</summary>
    public required CounterKind Kind { get; init; }

    /// <summary>Along the wall, or the longer side of an island.</summary>
    public required Length Length { get; init; }

    /// <summary>Front to back.</summary>
    public Length Depth { get; init; } = Length.FromInches(25);

    /// <summary>Where its middle stands on a wall; null lets the Layout stage choose.</summary>
    public WallSpot? Wall { get; init; }
}
