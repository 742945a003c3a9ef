namespace Estimator.Engine.Wiring.Joints;

/// <summary>The end of a conductor in a box.</summary>
/// <param name="Run">Index of its run.</param>
/// <param name="Colour">Which conductor of the run.</param>
public readonly record struct ConductorEnd(int Run, InsulationColour Colour);
