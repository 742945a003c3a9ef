namespace Estimator.Engine.House;

/// <summary>How the utility's conductors reach the house.</summary>
public enum ServiceEntrance
{
    /// <summary>Through the air to a mast or a weatherhead.</summary>
    Overhead = 1,

    /// <summary>From below, up a riser into the meter.</summary>
    Underground,
}
