namespace Estimator.Engine.Wiring.Joints;

/// <summary>Colour of a conductor in its cable.</summary>
/// <remarks>White is the grounded conductor's, NEC 200.6; bare the grounding conductor's, 250.119; black and red: common practice, no source.</remarks>
public enum InsulationColour
{
    /// <summary>Black.</summary>
    Black = 1,

    /// <summary>Red.</summary>
    Red,

    /// <summary>White.</summary>
    White,

    /// <summary>Bare.</summary>
    Bare,
}
