namespace Estimator.Engine.House;

/// <summary>What walls are made of, where that makes the work slower than in wood studs behind wallboard.</summary>
public enum WallBuild
{
    /// <summary>Wood studs.</summary>
    WoodStuds = 1,

    /// <summary>Plaster on lath; matters in finished walls.</summary>
    PlasterAndLath,

    /// <summary>Metal studs.</summary>
    MetalStuds,

    /// <summary>Masonry, furred out.</summary>
    FurredMasonry,
}
