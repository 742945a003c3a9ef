namespace Estimator.Engine.House;

/// <summary>Whether framing can be reached.</summary>
public enum WallState
{
    /// <summary>Open framing: studs are bored and boxes nailed on (new work).</summary>
    Open = 1,

    /// <summary>Finished walls: cable is fished and boxes are cut in (old work).</summary>
    Finished,
}
