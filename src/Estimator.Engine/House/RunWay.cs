namespace Estimator.Engine.House;

/// <summary>How a run goes through the framing.</summary>
public enum RunWay
{
    /// <summary>Along walls through bored studs, never across a doorway.</summary>
    AlongWalls = 1,

    /// <summary>Up into the ceiling framing, across, and down.</summary>
    Overhead,

    /// <summary>Down under the floor, across, and up.</summary>
    Underfloor,

    /// <summary>Out of one building, through a trench, into another.</summary>
    Underground,
}
