using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase;

/// <summary>A run that is cut from a coil in one piece.</summary>
/// <param name="Run">Id of the run, with its job.</param>
/// <param name="Length">The piece.</param>
public sealed record CutPiece(string Run, Length Length);
