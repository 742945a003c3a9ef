namespace Estimator.Engine.Wiring.Joints;

/// <summary>The end of a home run's conductor in the panel.</summary>
/// <param name="Run">Index of the run.</param>
/// <param name="Colour">Which conductor of it.</param>
/// <param name="Terminal">Where it ends.</param>
public readonly record struct PanelEnd(int Run, InsulationColour Colour, PanelTerminal Terminal);
