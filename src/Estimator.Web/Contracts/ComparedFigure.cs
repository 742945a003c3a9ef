using Estimator.Engine.Explanations;

namespace Estimator.Web.Contracts;

/// <summary>A head figure of two revisions.</summary>
/// <param name="What">What it is.</param>
/// <param name="Unit">Its unit; empty for a count.</param>
/// <param name="Before">In the one.</param>
/// <param name="After">In the other.</param>
/// <param name="Digits">Digits after the point.</param>
public sealed record ComparedFigure(string What, string Unit, decimal Before, decimal After, int Digits)
{
    /// <summary>What explains it in the one; null for a plain count, and where that revision can't be worked out as it was saved.</summary>
    public Fact? ToldBefore { get; init; }

    /// <summary>What explains it in the other.</summary>
    public Fact? ToldAfter { get; init; }
}
