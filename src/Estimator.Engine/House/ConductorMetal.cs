namespace Estimator.Engine.House;

/// <summary>Metal of thick conductors.</summary>
public enum ConductorMetal
{
    /// <summary>Copper.</summary>
    Copper = 1,

    /// <summary>Aluminium.</summary>
    Aluminium,
}
