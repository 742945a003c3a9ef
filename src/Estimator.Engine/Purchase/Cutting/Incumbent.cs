namespace Estimator.Engine.Purchase.Cutting;

/// <summary>The cheapest plan found so far.</summary>
internal sealed class Incumbent(CuttingModel model)
{
    internal Bin[] Bins { get; private set; } = [];

    internal long Price { get; private set; } = long.MaxValue;

    /// <summary>Takes a plan where it costs less. Empty bins are left out.</summary>
    internal bool Offer(IEnumerable<Bin> bins)
    {
        Bin[] used = [.. bins.Where(b => b.Items.Length > 0)];
        var price = used.Sum(b => model.StockPrices[b.Stock]);
        if (price >= Price)
        {
            return false;
        }

        (Bins, Price) = (used, price);
        return true;
    }
}
