using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Purchase;

namespace Estimator.Web.Purchase;

/// <summary>A coil as it is cut, ready to be drawn.</summary>
/// <param name="Number">1 for the first coil of its cable.</param>
/// <param name="Coil">The coil.</param>
/// <param name="Whole">What is on it before the first cut.</param>
/// <param name="Pieces">The pieces in the order of cutting.</param>
/// <param name="Left">What stays on it.</param>
/// <param name="Kept">Whether that is worth keeping.</param>
public sealed record CoilCut(int Number, CutCoil Coil, Fact Whole, ImmutableArray<PieceCut> Pieces, Fact Left, bool Kept)
{
    /// <summary>Share of a length of feet that a piece takes, in percent, as a style wants it.</summary>
    public static string Percent(Fact length, decimal feet) =>
        FormattableString.Invariant($"{100 * length.AsLength().Value.ToFeet() / Math.Max(feet, 1):0.###}%");
}
