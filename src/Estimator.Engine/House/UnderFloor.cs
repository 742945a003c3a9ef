namespace Estimator.Engine.House;

/// <summary>What lies under the floor of a level.</summary>
public enum UnderFloor
{
    /// <summary>Concrete on the ground: no cable passes.</summary>
    Slab = 1,

    /// <summary>A crawl space that cables may cross.</summary>
    Crawl,
}
