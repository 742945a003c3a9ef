namespace Estimator.Engine.Purchase.Cutting;

/// <summary>The order in which the methods are tried: first plans and bounds, sets of stocks in order of price, recombination, then the linear program and plans made from it.</summary>
internal sealed class CuttingSearch(CuttingModel model, StepMeter meter, Incumbent incumbent)
{
    private const int TriesAPiece = 20;
    private const int TriesAPieceAgain = 5;
    private const int MostItems = 400;

    private readonly BoundedKnapsack _knapsack = new(model, meter);
    private ulong _turn;

    /// <summary>Searches; answers the lower bound.</summary>
    internal long Run(long steps)
    {
        new BestFit(model, meter).Offer(incumbent);
        var rules = new RoomRules(model, _knapsack, new PriceCover(model, meter));
        rules.AddUsual(incumbent.Price);
        bool Open() => rules.LowerBound < incumbent.Price && !meter.Spent;
        if (Open())
        {
            TrySets(rules, steps / 2);
        }

        if (Open())
        {
            Recombine(incumbent.Bins, TriesAPiece * model.Pieces);
        }

        if (Open() && model.Lengths.Length <= MostItems)
        {
            var columns = new ColumnGeneration(model, meter, _knapsack);
            columns.Know(incumbent.Bins);
            columns.Solve(model.Demands, model.StockLimits, int.MaxValue);
            rules.Add(columns.Worth, incumbent.Price);
            if (Open())
            {
                // The new condition refutes sets that stayed open.
                TrySets(rules, steps / 10);
            }

            var diving = new Diving(model, meter, columns);
            for (var dive = 0; Open(); dive++)
            {
                columns.Know(Recombine([.. diving.Dive(dive == 0 ? 0.9 : 0.75, dive == 0 ? 0 : 3)], TriesAPieceAgain * model.Pieces));
            }
        }

        return Math.Min(rules.LowerBound, incumbent.Price);
    }

    private void TrySets(RoomRules rules, long steps)
    {
        var whole = meter.Allow(steps);
        new SetSearch(model, meter, rules, incumbent).Run();
        meter.Restore(whole);
    }

    private IEnumerable<Bin> Recombine(Bin[] bins, int tries)
    {
        var recombination = new Recombination(model, meter, bins, ++_turn);
        recombination.Run(tries);
        incumbent.Offer(recombination.Bins());
        return recombination.Bins();
    }
}
