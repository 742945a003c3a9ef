using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Breaker and conductors of a circuit before its route is known.</summary>
/// <param name="BreakerA">Breaker rating.</param>
/// <param name="Poles">1 or 2.</param>
/// <param name="Volts">Voltage across the load.</param>
/// <param name="Wire">Size of the ungrounded conductors.</param>
/// <param name="Conductors">Insulated conductors of the feeding cable.</param>
internal sealed record CircuitRating(Fact BreakerA, int Poles, Fact Volts, WireSize Wire, int Conductors);
