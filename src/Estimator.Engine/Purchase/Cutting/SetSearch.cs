namespace Estimator.Engine.Purchase.Cutting;

/// <summary>Tries sets of stocks in order of price. The first that the pieces can be cut from is cheapest once all before it are refuted.</summary>
internal sealed class SetSearch(CuttingModel model, StepMeter meter, RoomRules rules, Incumbent incumbent)
{
    private const int MostStocks = 40;
    private const int MostOpen = 60;

    /// <summary>Searches; raises the bound and improves the plan as far as it comes.</summary>
    internal void Run()
    {
        var sets = new StockSets(model, meter, rules.All);
        var packing = new SetPacking(model, meter);
        var open = 0;
        for (var below = incumbent.Price; rules.LowerBound < incumbent.Price && !meter.Spent && incumbent.Bins.Length <= MostStocks;)
        {
            if (sets.Below(below) is not { } listed)
            {
                // Too many: those in the lower half of the gap come first.
                below = rules.LowerBound + ((below - rules.LowerBound) / 2 / model.PriceStep * model.PriceStep);
                if (below <= rules.LowerBound)
                {
                    return;
                }

                continue;
            }

            foreach (var (price, count) in listed)
            {
                if (price >= incumbent.Price || meter.Spent || open > MostOpen)
                {
                    break;
                }

                if (open == 0)
                {
                    rules.Raise(price);
                }

                if (packing.Pack(count, out var bins) is not { } fits)
                {
                    open++;
                }
                else if (fits)
                {
                    incumbent.Offer(bins);
                }
            }

            if (open > 0 || meter.Spent)
            {
                return;
            }

            rules.Raise(Math.Min(below, incumbent.Price));
            below = incumbent.Price;
        }
    }
}
