namespace Estimator.Engine.Wiring.Circuits;

/// <summary>A draft circuit's part in a multiwire circuit.</summary>
/// <param name="JoinedAt">The box of the other circuit, its first, where this one leaves the common home run; null for the circuit that has that home run.</param>
/// <param name="PartnerEntry">The first box of the other circuit, to which a cable goes on; null for the circuit that leaves.</param>
internal readonly record struct SharedHomeRun(int? JoinedAt, int? PartnerEntry);
