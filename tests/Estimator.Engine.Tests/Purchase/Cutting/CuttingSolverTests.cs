using System.Collections.Immutable;
using CsCheck;
using Estimator.Engine.Purchase.Cutting;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Purchase.Cutting;

public sealed class CuttingSolverTests
{
    private const long Steps = 20_000_000;

    private static readonly Gen<CuttingStock[]> Stocks = Gen.Select(Gen.Int[20, 60], Gen.Int[1, 50], Gen.Int[0, 4]).Select((length, price, count) => new CuttingStock(length, price, count == 0 ? 1 : null)).Array[1, 4]
        .Select(s => (CuttingStock[])[.. s, new CuttingStock(60, 40)]);

    private static readonly Gen<CuttingItem[]> Items = Gen.Select(Gen.Int[4, 60], Gen.Int[1, 2]).Select((length, quantity) => new CuttingItem(length, quantity)).Array[1, 4];

    [Fact]
    public void Solve_SmallProblems_CostsTheLeastOfEveryWayTried() => Gen.Select(Stocks, Items).Sample(
        (stocks, items) =>
        {
            var plan = CuttingSolver.Solve(new CuttingProblem([.. stocks], [.. items]), Steps);
            Assert.Empty(Problems(stocks, items, plan));
            Assert.Equal(CuttingCheck.LeastPrice(Plain(stocks), Wanted(items)), plan.Price);
            Assert.True(plan.LowerBound <= plan.Price);
        },
        iter: 1000);

    [Fact]
    public void Solve_LargerProblems_IsFeasibleAndNeverClaimsTooMuch() => Gen.Select(Stocks, Gen.Int[4, 60].Array[20, 90]).Sample(
        (stocks, lengths) =>
        {
            CuttingItem[] items = [.. lengths.Select(l => new CuttingItem(l, 1))];
            var plan = CuttingSolver.Solve(new CuttingProblem([.. stocks], [.. items]), 5_000_000);
            Assert.Empty(Problems(stocks, items, plan));
            Assert.True(plan.LowerBound <= CuttingSolver.Solve(new CuttingProblem([.. stocks], [.. items]), 40_000_000).Price);
        },
        iter: 60);

    // Thirty pieces of 34 and sixty of 33 from stocks of 100: a triplet fills a stock, so thirty are enough. The linear program alone says so.
    [Fact]
    public void Solve_TripletsThatFillTheirStocks_NeedsAThirdAsMany()
    {
        var plan = CuttingSolver.Solve(new CuttingProblem([new CuttingStock(100, 1)], [new CuttingItem(34, 30), new CuttingItem(33, 60)]), Steps);
        Assert.Equal((30, 30), (plan.Price, plan.LowerBound));
    }

    [Fact]
    public void Solve_FewSteps_StillHoldsEveryPiece()
    {
        CuttingItem[] items = [.. Enumerable.Range(20, 60).Select(l => new CuttingItem(l, 2))];
        CuttingStock[] stocks = [new(100, 10), new(130, 12)];
        Assert.Empty(Problems(stocks, items, CuttingSolver.Solve(new CuttingProblem([.. stocks], [.. items]), 1)));
    }

    [Fact]
    public void Problem_PieceLongerThanAllStocks_IsRefused() =>
        Assert.Contains("60", Assert.Throws<ArgumentException>(() => new CuttingProblem([new CuttingStock(50, 1), new CuttingStock(60, 1, 3)], [new CuttingItem(60, 1)])).Message, StringComparison.Ordinal);

    private static IEnumerable<string> Problems(CuttingStock[] stocks, CuttingItem[] items, CuttingPlan plan) => CuttingCheck.Problems(
        Plain(stocks), Wanted(items), [.. plan.Patterns.Select(p => (p.Stock, (IReadOnlyList<long>)[.. p.Items.Select(i => (long)items[i].Length)]))], plan.Price);

    private static List<(long Length, long Price, int? Count)> Plain(CuttingStock[] stocks) => [.. stocks.Select(s => ((long)s.Length, s.Price, s.Count))];

    private static ImmutableArray<long> Wanted(CuttingItem[] items) => [.. items.SelectMany(i => Enumerable.Repeat((long)i.Length, i.Quantity))];
}
