namespace Estimator.Engine.House;

/// <summary>Which way joists run.</summary>
public enum JoistDirection
{
    /// <summary>Across the shorter side of the level's outline.</summary>
    ShorterSpan = 1,

    /// <summary>Along the grid's x axis.</summary>
    AlongX,

    /// <summary>Along the grid's y axis.</summary>
    AlongY,
}
