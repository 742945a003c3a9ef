namespace Estimator.Engine.Catalogue;

/// <summary>What a box is made of.</summary>
public enum BoxMaterial
{
    /// <summary>It serves every wiring method, or nobody said.</summary>
    Any = 1,

    /// <summary>For nonmetallic cable.</summary>
    Nonmetallic,

    /// <summary>For armored cable and metal raceways.</summary>
    Metal,
}
