using Estimator.Engine.Explanations;
using Estimator.Engine.Framing;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Takeoff;

/// <summary>Conductors that are pulled into a raceway of their own, of a run or of a feeder.</summary>
/// <param name="Path">The way of the raceway.</param>
/// <param name="Total">Length of each conductor.</param>
/// <param name="Size">Size of the insulated ones.</param>
/// <param name="Conductors">How many insulated ones, the grounding conductor not counted.</param>
/// <param name="Ground">Size of the grounding conductor.</param>
/// <param name="Where">What they are for.</param>
internal sealed record PulledConductors(RunPath Path, Fact Total, WireSize Size, int Conductors, WireSize Ground, string Where);
