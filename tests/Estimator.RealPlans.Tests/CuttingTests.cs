using Estimator.Engine.Panels;
using Estimator.Engine.Purchase;
using Estimator.Engine.Purchase.Cutting;
using Estimator.TestKit.Instances;

namespace Estimator.RealPlans.Tests;

/// <summary>Published cutting instances, and packs and legs with known optima: every plan is feasible, no bound is above the best plan known, and families are solved as well as they must be.</summary>
public sealed class CuttingTests
{
    // What a common core does in a tenth of a second and in a second.
    private const long Short = 100_000_000;
    private const long Long = 1_000_000_000;

    private static readonly string Folder = Path.Combine(Environment.GetEnvironmentVariable("ESTIMATOR_DATA") ?? "", "benchmarks");

    // Most mean gap to the best plan known in percent, share that is proven in percent, most over on one file in percent of its price.
    public static TheoryData<string, long, decimal, int, decimal> Families() => new()
    {
        { "coil, to 60 pieces", Short, 0m, 100, 0m },
        { "coil, more pieces", Short, 0.1m, 100, 0.2m },
        { "hs", Long, 0.03m, 35, 0.1m },
        { "monaci", Long, 0.03m, 80, 0.2m },
        { "schwerin1", Long, 0m, 100, 0m },
        { "schwerin2", Long, 0m, 100, 0m },
        { "scholl1", Long, 0m, 100, 0m },
        { "scholl2", Long, 0m, 100, 0m },
        { "scholl3", Long, 2m, 0, 2m },
        { "falk", Long, 0m, 100, 0m },
        { "hard28", Long, 2m, 0, 2m },
    };

    [Theory]
    [MemberData(nameof(Families))]
    public void Solve_PublishedFamily_IsFeasibleAndNearTheBestKnown(string family, long steps, decimal mostMeanGap, int leastProven, decimal mostGap)
    {
        var gaps = new List<decimal>();
        var proven = 0;
        foreach (var instance in CuttingInstance.In(Path.Combine(Folder, "cutting")).Where(i => i.Family == family))
        {
            var plan = CuttingSolver.Solve(instance.Problem, steps);
            Assert.Empty(instance.Problems(plan));
            Assert.True(plan.LowerBound <= instance.Value, $"{instance.Name}: {plan.LowerBound} is claimed, {instance.Value} is known");
            gaps.Add(100m * (plan.Price - instance.Value) / instance.Value);
            proven += plan.Proven ? 1 : 0;
        }

        Assert.NotEmpty(gaps);
        Assert.True(gaps.Average() <= mostMeanGap, $"mean gap {gaps.Average()}");
        Assert.True(gaps.Max() <= mostGap, $"worst gap {gaps.Max()}");
        Assert.True(100 * proven >= leastProven * gaps.Count, $"{proven} of {gaps.Count} are proven");
    }

    [Fact]
    public void Packs_EveryRow_CostTheLeast()
    {
        var rows = PackInstance.In(Path.Combine(Folder, "legs", "packs.csv")).ToList();
        Assert.NotEmpty(rows);
        Assert.All(rows, r => Assert.Equal(r.LeastPrice, PackChoice.Cheapest(r.Need, r.Offers).Sum(p => p.Count * p.Offer.Price.ToDollars())));
    }

    [Fact]
    public void Legs_EveryRow_AreAsEvenAsCanBe()
    {
        var rows = LegInstance.In(Path.Combine(Folder, "legs", "legs.csv")).ToList();
        Assert.NotEmpty(rows);
        Assert.All(rows, r =>
        {
            var split = LegBalancing.Split(r.Loads, 0, Math.Max(0, r.Loads.Length - r.MostPerLeg), r.MostPerLeg);
            Assert.Equal((r.LeastDifference, r.LeastDifference), (split.ImbalanceVa, split.LowerBoundVa));
        });
    }
}
