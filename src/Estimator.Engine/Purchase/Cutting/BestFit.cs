namespace Estimator.Engine.Purchase.Cutting;

/// <summary>First plans: pieces go, longest first, to the stock where they leave least; each stock is then exchanged for the cheapest that holds its load.</summary>
internal sealed class BestFit(CuttingModel model, StepMeter meter)
{
    /// <summary>A plan for each stock length that a new stock is opened with.</summary>
    internal void Offer(Incumbent incumbent)
    {
        for (var k = 0; k < model.StockLengths.Length; k++)
        {
            if (!model.Limited(k))
            {
                incumbent.Offer(Plan(model.Demands, model.StockLengths[k], model.StockLimits));
            }
        }
    }

    /// <summary>A plan for some of the pieces, with stocks opened at a length, or longer where a piece needs it.</summary>
    internal List<Bin> Plan(int[] demands, int open, int[] limits)
    {
        var bins = new List<(int Stock, long Left, List<int> Items)>();
        for (var k = 0; k < model.StockLengths.Length; k++)
        {
            for (var n = 0; model.Limited(k) && model.StockPrices[k] == 0 && n < limits[k]; n++)
            {
                bins.Add((k, model.StockLengths[k], []));
            }
        }

        for (var i = 0; i < demands.Length; i++)
        {
            for (var n = 0; n < demands[i]; n++)
            {
                Put(bins, i, open);
            }
        }

        return [.. bins.Where(b => b.Items.Count > 0).Select(b => new Bin(b.Stock >= 0 ? b.Stock : model.CheapestFor(-1 - b.Stock - b.Left), [.. b.Items]))];
    }

    // A stock that is still to be chosen is written as its length, below zero.
    private void Put(List<(int Stock, long Left, List<int> Items)> bins, int item, int open)
    {
        var (length, best) = (model.Lengths[item], -1);
        for (var b = 0; b < bins.Count; b++)
        {
            if (bins[b].Left >= length && (best < 0 || bins[b].Left < bins[best].Left))
            {
                best = b;
            }
        }

        meter.Add(bins.Count);
        if (best < 0)
        {
            var whole = length <= open ? open : model.StockLengths[model.CheapestFor(length)];
            bins.Add((-1 - whole, whole - length, [item]));
            return;
        }

        bins[best].Items.Add(item);
        bins[best] = bins[best] with { Left = bins[best].Left - length };
    }
}
