using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase;

/// <summary>A run that is cut from a coil in one piece.</summary>
/// <param name="Run">Id of the run, with its job.</param>
/// <param name="Length">The piece, with its tolerance.</param>
/// <param name="Trim">Cable that the cut costs beside it.</param>
public sealed record CutPiece(string Run, Length Length, Length Trim = default)
{
    /// <summary>What explains the length.</summary>
    public NodeRef LengthNode { get; init; }

    /// <summary>What explains the trim.</summary>
    public NodeRef TrimNode { get; init; }
}
