namespace Estimator.Engine.House;

/// <summary>Which circuits share a neutral two by two, as multiwire branch circuits.</summary>
public enum MultiwireUse
{
    /// <summary>None.</summary>
    None = 1,

    /// <summary>The small-appliance circuits.</summary>
    SmallAppliance,

    /// <summary>All circuits of several outlets, each with one of its own kind.</summary>
    Every,
}
