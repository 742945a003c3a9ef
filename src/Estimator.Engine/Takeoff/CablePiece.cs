using Estimator.Engine.Explanations;

namespace Estimator.Engine.Takeoff;

/// <summary>A run of cable as it is cut: one continuous piece.</summary>
/// <param name="ItemId">The cable.</param>
/// <param name="Run">Id of the run or feeder.</param>
/// <param name="Length">The piece: the run and its tolerance, in whole sixteenths of an inch.</param>
/// <param name="Trim">Cable that the cut costs beside the piece.</param>
public sealed record CablePiece(string ItemId, string Run, Fact Length, Fact Trim);
