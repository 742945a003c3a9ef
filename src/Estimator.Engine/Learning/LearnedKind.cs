namespace Estimator.Engine.Learning;

/// <summary>What closed jobs teach.</summary>
public enum LearnedKind
{
    /// <summary>Hours of a phase.</summary>
    Hours = 1,

    /// <summary>Material of a category.</summary>
    Material,
}
