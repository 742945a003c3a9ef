namespace Estimator.Engine.Purchase.Cutting;

/// <summary>Solves the linear program over all patterns: those that lower the price are found as the most valuable choice of pieces for each stock.</summary>
internal sealed class ColumnGeneration
{
    private const int MostPatterns = 20_000;
    private const double Fine = 1L << 40;

    private readonly CuttingModel _model;
    private readonly StepMeter _meter;
    private readonly BoundedKnapsack _knapsack;
    private readonly long[] _worth;
    private readonly int[] _counts;
    private readonly int[] _demands;
    private readonly double _scale;

    internal ColumnGeneration(CuttingModel model, StepMeter meter, BoundedKnapsack knapsack)
    {
        (_model, _meter, _knapsack) = (model, meter, knapsack);
        Pool = new PatternPool(model);
        Master = new MasterProblem(model, Pool, meter, MostPatterns);
        (_worth, _counts, _demands) = (new long[model.Lengths.Length], new int[model.Lengths.Length], new int[model.Lengths.Length]);
        _scale = Math.Floor(Fine / Math.Max(1, model.StockPrices.Max()));
    }

    internal PatternPool Pool { get; }

    internal MasterProblem Master { get; }

    /// <summary>Value of a piece of each item in the linear program, in parts of the price unit.</summary>
    internal ReadOnlySpan<long> Worth => _worth;

    /// <summary>Puts the stocks of a plan among the patterns.</summary>
    internal void Know(IEnumerable<Bin> bins)
    {
        foreach (var bin in bins)
        {
            Array.Clear(_counts);
            foreach (var item in bin.Items)
            {
                _counts[item]++;
            }

            Pool.Add(_counts, bin.Stock);
        }

        Array.Clear(_counts);
    }

    /// <summary>Solves for some demands.</summary>
    /// <param name="demands">Pieces of each item.</param>
    /// <param name="limits">How many of each stock are left.</param>
    /// <param name="rounds">Most searches for new patterns.</param>
    internal bool Solve(ReadOnlySpan<int> demands, ReadOnlySpan<int> limits, int rounds)
    {
        demands.CopyTo(_demands);
        Master.Start(demands, limits, _counts);
        for (var round = 0; round < rounds && !_meter.Spent; round++)
        {
            Master.Optimise();
            if (!Price())
            {
                return true;
            }
        }

        return false;
    }

    // New patterns that lower the price; false where there are none, or no more are taken.
    private bool Price()
    {
        for (var i = 0; i < _worth.Length; i++)
        {
            _worth[i] = (long)Math.Max(0, Math.Floor(Master.DualOfItem(i) * _scale));
        }

        _knapsack.Solve(_worth, _demands, within: true);
        var (before, found) = (Pool.Count, false);
        for (var k = 0; k < _model.StockLengths.Length && Pool.Count < MostPatterns; k++)
        {
            var price = (_model.StockPrices[k] - Master.DualOfStock(k)) * _scale;
            if (_knapsack.ValueOf(k) > price + (1e-7 * _scale))
            {
                Array.Clear(_counts);
                _knapsack.Choice(k, _counts);
                Pool.Add(_counts, k);
                found = true;
            }
        }

        Array.Clear(_counts);
        return found && Pool.Count > before;
    }
}
