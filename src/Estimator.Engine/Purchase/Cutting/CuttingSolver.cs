using System.Collections.Immutable;

namespace Estimator.Engine.Purchase.Cutting;

/// <summary>Solves the cutting stock problem with several stock lengths, and proves how far from the cheapest plan it is.</summary>
public static class CuttingSolver
{
    /// <summary>The plan.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="steps">Steps that may be taken: the search ends after the same work on every machine.</param>
    public static CuttingPlan Solve(CuttingProblem problem, long steps)
    {
        var items = problem.Items.Select(i => (i.Length, i.Quantity)).ToList();
        if (items.All(i => i.Quantity == 0))
        {
            return new CuttingPlan([], 0, 0);
        }

        var model = new CuttingModel(items, [.. problem.Stocks.Select(s => (s.Length, s.Price, s.Count ?? int.MaxValue))]);
        var meter = new StepMeter(steps);
        var incumbent = new Incumbent(model);
        var search = new CuttingSearch(model, meter, incumbent);
        var bound = search.Run(steps);
        return new CuttingPlan(Patterns(problem, model, incumbent), incumbent.Price, bound);
    }

    // The items of the problem may hold a length several times: its pieces are handed out in the order of the items.
    private static ImmutableArray<CuttingPattern> Patterns(CuttingProblem problem, CuttingModel model, Incumbent incumbent)
    {
        var left = problem.Items.Select(i => i.Quantity).ToArray();
        var byLength = Enumerable.Range(0, left.Length).GroupBy(i => problem.Items[i].Length).ToDictionary(g => g.Key, g => new Queue<int>(g.SelectMany(i => Enumerable.Repeat(i, left[i]))));
        return [.. incumbent.Bins.Select(b => new CuttingPattern(model.StockIndex[b.Stock], [.. b.Items.Select(i => byLength[model.Lengths[i] * model.Divisor].Dequeue())]))];
    }
}
