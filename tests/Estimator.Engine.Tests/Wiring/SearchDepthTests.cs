using Estimator.Engine.Wiring;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Engine.Tests.Wiring;

/// <summary>The quick search is a beginning of the thorough one.</summary>
public sealed class SearchDepthTests
{
    private const int Houses = 120;
    private const int Controls = 12;

    [Fact]
    public void Thorough_OfAnyHouse_CostsNoMoreThanQuick()
    {
        var better = 0;
        Parallel.For(0, Houses, n =>
        {
            var (quick, thorough) = (Cost(n, SearchDepth.Quick), Cost(n, SearchDepth.Thorough));
            Assert.True(thorough <= quick, $"house {n}: {thorough} after more passes, {quick} before");
            Interlocked.Add(ref better, thorough < quick ? 1 : 0);
        });
        Assert.True(better > 0, "more passes never helped, so the depths are one");
    }

    [Fact]
    public void Estimate_OfADepth_SaysWhich() =>
        Assert.Equal(SearchDepth.Quick, JobEstimate.Compute(HouseGen.Number(1), Catalogues.Shipped, SearchDepth.Quick).Depth);

    // Every other house is full of controls, so that a search has much to move.
    private static long Cost(int house, SearchDepth depth) => JobEstimate.Compute(
        house % 2 == 0 ? HouseGen.Number(house) : ControlHouses.Number(house, Controls), Catalogues.Shipped, depth).Wiring.PlanningCostE4;
}
