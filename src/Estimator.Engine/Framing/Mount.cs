namespace Estimator.Engine.Framing;

/// <summary>What a box is fixed to.</summary>
public enum Mount
{
    /// <summary>A wall.</summary>
    Wall = 1,

    /// <summary>The ceiling.</summary>
    Ceiling,
}
