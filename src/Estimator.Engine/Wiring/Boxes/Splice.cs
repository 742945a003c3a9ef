using Estimator.Engine.Measures;

namespace Estimator.Engine.Wiring.Boxes;

/// <summary>Conductors joined under one connector.</summary>
/// <param name="Function">What the conductors are.</param>
/// <param name="Size">Their size.</param>
/// <param name="Conductors">How many, pigtails counted.</param>
public readonly record struct Splice(ConductorFunction Function, WireSize Size, int Conductors);
