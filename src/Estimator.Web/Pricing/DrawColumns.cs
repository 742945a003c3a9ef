using System.Collections.Immutable;
using Estimator.Engine.Pricing;

namespace Estimator.Web.Pricing;

/// <summary>Where the columns of the draws stand in a drawing, from zero up.</summary>
/// <param name="Columns">The columns: place, height, and whether they lie in the range.</param>
/// <param name="Price">Where the price stands.</param>
/// <param name="Base">Where zero lies.</param>
/// <param name="Anchor">On which side of the price its words stand.</param>
internal sealed record DrawColumns(ImmutableArray<(decimal X, decimal Width, decimal Height, bool Inside)> Columns, decimal Price, decimal Base, string Anchor)
{
    private const decimal Gap = 2;
    private const decimal Head = 18;

    /// <summary>The drawing of a bid.</summary>
    internal static DrawColumns Of(Bid bid, decimal wide, decimal height)
    {
        var bins = bid.Range.Bins;
        var (most, each) = (bins.Max(b => b.Draws), wide / bins.Length);
        var span = bins[^1].To - bins[0].From;
        var at = span == 0 ? wide / 2 : wide * (bid.Price.Value - bins[0].From) / span;
        return new DrawColumns(
            [.. bins.Select((b, i) => (i * each, Math.Max(1, each - Gap), (height - Head) * b.Draws / most, b.To > bid.Low.Value && b.From < bid.High.Value))],
            at, height, at < wide / 4 ? "start" : at > wide * 3 / 4 ? "end" : "middle");
    }
}
