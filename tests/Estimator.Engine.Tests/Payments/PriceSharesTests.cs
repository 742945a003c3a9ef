using System.Collections.Immutable;
using CsCheck;
using Estimator.Engine.Explanations;
using Estimator.Engine.Payments;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Payments;

public sealed class PriceSharesTests
{
    // Largest remainders by the quota of Hare: the example of ten seats for 100,000 votes that reference works on apportionment give; from memory, and by hand: 4.70, 1.60, 1.59, 1.20, 0.61, 0.31.
    [Fact]
    public void Divide_TenCentsByVotes_GivesTheSeatsOfTheExample() =>
        Assert.Equal([0.05m, 0.02m, 0.01m, 0.01m, 0.01m, 0m], Divided(0.10m, 47_000, 16_000, 15_900, 12_000, 6_100, 3_100).Select(f => f.Value));

    [Fact]
    public void Divide_AnyPrice_AddsUpInWholeCentsWithinACentOfTheShare() =>
        Gen.Select(Gen.Long[0, 50_000_000], Gen.Int[1, 1_000_000].Array[1, 12]).Sample((cents, weights) =>
        {
            var price = cents / 100m;
            var shares = Divided(price, weights).Select(f => f.Value).ToList();
            Assert.Equal(price, shares.Sum());
            Assert.All(shares.Zip(weights), s => Assert.InRange(s.First - (price * s.Second / weights.Sum(w => (long)w)), -0.01m, 0.01m));
            Assert.All(shares, s => Assert.True(s >= 0 && s % 0.01m == 0));
        });

    [Fact]
    public void Divide_AnyPrice_ExplainsEachCent()
    {
        var page = new PageWriter(1);
        Divided(page, 1234.57m, [3, 3, 1]);
        Assert.Empty(ExplanationCheck.Problems(new ExplanationBook([page.ToPage()])));
    }

    private static ImmutableArray<Fact> Divided(decimal price, params int[] weights) => Divided(new PageWriter(1), price, weights);

    private static ImmutableArray<Fact> Divided(PageWriter page, decimal price, int[] weights) =>
        PriceShares.Divide(page, page.Given("$.price", "Price", price, Unit.Dollars), [.. weights.Select((w, i) => ($"Line {i}", page.Given($"$.w[{i}]", "Weight", w, Unit.Factor)))]);
}
