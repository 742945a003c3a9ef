namespace Estimator.Engine.Purchase.Cutting;

/// <summary>The least price of whole stocks that meet one <see cref="RoomRule"/>.</summary>
/// <remarks>Exact, by dynamic programming over the room or, where that is finer, over the price. Prices that are too fine are rounded down, which keeps the bound valid.</remarks>
internal sealed class PriceCover(CuttingModel model, StepMeter meter)
{
    private const int MostUnits = 400_000;

    private long[] _best = [];

    /// <summary>The least price; <paramref name="limit"/> where no lower one is enough.</summary>
    internal long LeastPrice(RoomRule rule, long limit)
    {
        var (needed, greatest, divisor) = (rule.Needed, 0L, 0L);
        for (var k = 0; k < model.StockLengths.Length; k++)
        {
            if (model.StockPrices[k] > 0)
            {
                greatest = Math.Max(greatest, rule.Room[k]);
                divisor = Gcd(divisor, rule.Room[k]);
            }
            else if (model.Limited(k))
            {
                needed -= rule.Room[k] * model.StockLimits[k];
            }
            else if (rule.Room[k] > 0)
            {
                return 0;
            }
        }

        if (needed <= 0)
        {
            return 0;
        }

        if (greatest == 0)
        {
            return limit;
        }

        needed = ((needed - 1) / divisor) + 1;
        return Math.Min(limit, needed < limit / model.PriceStep && needed < MostUnits ? ByRoom(rule, (int)needed, divisor) : ByPrice(rule, needed, divisor, limit));
    }

    private long ByRoom(RoomRule rule, int needed, long divisor)
    {
        var best = Fresh(needed + 1);
        best[1..].Fill(long.MaxValue / 2);
        for (var k = 0; k < model.StockLengths.Length; k++)
        {
            var (price, room) = (model.StockPrices[k], (int)Math.Min(needed, rule.Room[k] / divisor));
            for (var n = 0; model.Limited(k) && price > 0 && room > 0 && n < model.StockLimits[k]; n++)
            {
                for (var r = needed; r > 0; r--)
                {
                    best[r] = Math.Min(best[r], price + best[Math.Max(0, r - room)]);
                }
            }
        }

        for (var k = 0; k < model.StockLengths.Length; k++)
        {
            var (price, room) = (model.StockPrices[k], (int)Math.Min(needed, rule.Room[k] / divisor));
            for (var r = 1; !model.Limited(k) && room > 0 && r <= needed; r++)
            {
                best[r] = Math.Min(best[r], price + best[Math.Max(0, r - room)]);
            }
        }

        meter.Add((long)needed * model.StockLengths.Length);
        return best[needed];
    }

    // The most room for each sum of money.
    private long ByPrice(RoomRule rule, long needed, long divisor, long limit)
    {
        var step = model.PriceStep * ((limit / model.PriceStep / MostUnits) + 1);
        var units = (int)(limit / step);
        var best = Fresh(units + 1);
        best.Clear();
        for (var k = 0; k < model.StockLengths.Length; k++)
        {
            var (price, room) = ((int)Math.Min(units + 1, model.StockPrices[k] / step), rule.Room[k] / divisor);
            for (var n = 0; model.Limited(k) && model.StockPrices[k] > 0 && n < model.StockLimits[k]; n++)
            {
                for (var money = units; money >= price; money--)
                {
                    best[money] = Math.Max(best[money], best[money - price] + room);
                }
            }
        }

        for (var k = 0; k < model.StockLengths.Length; k++)
        {
            var (price, room) = ((int)Math.Min(units + 1, model.StockPrices[k] / step), rule.Room[k] / divisor);
            if (!model.Limited(k) && price == 0)
            {
                return 0;
            }

            for (var money = price; !model.Limited(k) && money <= units; money++)
            {
                best[money] = Math.Max(best[money], best[money - price] + room);
            }
        }

        meter.Add((long)units * model.StockLengths.Length);
        var enough = 0;
        while (enough <= units && best[enough] < needed)
        {
            enough++;
        }

        return enough > units ? limit : enough * step;
    }

    private Span<long> Fresh(int length)
    {
        if (_best.Length < length)
        {
            _best = new long[length];
        }

        _best[0] = 0;
        return _best.AsSpan(0, length);
    }

    private static long Gcd(long a, long b) => b == 0 ? a : Gcd(b, a % b);
}
