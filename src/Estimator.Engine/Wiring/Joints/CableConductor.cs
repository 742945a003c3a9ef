namespace Estimator.Engine.Wiring.Joints;

/// <summary>One conductor of a cable: what one sees, and what it is for.</summary>
/// <param name="Colour">Its colour.</param>
/// <param name="Net">What it is joined to.</param>
/// <param name="ReMarked">Whether a white conductor serves as a hot one and is marked again at both ends.</param>
public readonly record struct CableConductor(InsulationColour Colour, Net Net, bool ReMarked);
