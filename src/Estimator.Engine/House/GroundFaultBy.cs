namespace Estimator.Engine.House;

/// <summary>Where ground-fault protection sits.</summary>
public enum GroundFaultBy
{
    /// <summary>Whichever costs less on the planning costs.</summary>
    Cheaper = 1,

    /// <summary>In the breaker.</summary>
    Breaker,

    /// <summary>In the first receptacle of the circuit, its load side protected.</summary>
    FirstReceptacle,
}
