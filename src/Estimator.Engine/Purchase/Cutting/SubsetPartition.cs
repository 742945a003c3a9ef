using System.Numerics;

namespace Estimator.Engine.Purchase.Cutting;

/// <summary>Divides a few pieces among stocks at the least price; of equal prices it prefers what is left in few long ends. Exact, by dynamic programming over subsets.</summary>
internal sealed class SubsetPartition
{
    /// <summary>Most pieces that are divided.</summary>
    internal const int MostPieces = 10;

    private const int PriceShift = 28;
    private const int SlackBits = 12;
    private const long TooLong = long.MaxValue / (2 * MostPieces);

    private readonly CuttingModel _model;
    private readonly StepMeter _meter;
    private readonly int[] _bought;
    private readonly long[] _load = new long[1 << MostPieces];
    private readonly long[] _alone = new long[1 << MostPieces];
    private readonly long[] _best = new long[1 << MostPieces];
    private readonly int[] _part = new int[1 << MostPieces];
    private readonly int _slackShift;

    internal SubsetPartition(CuttingModel model, StepMeter meter)
    {
        (_model, _meter) = (model, meter);
        _bought = [.. Enumerable.Range(0, model.StockLengths.Length).Where(k => !model.Limited(k))];
        while (model.Longest >> _slackShift >= 1 << SlackBits)
        {
            _slackShift++;
        }
    }

    /// <summary>Divides pieces; the answer is price and slack in one number, the smaller the better.</summary>
    internal long Divide(ReadOnlySpan<int> items)
    {
        var all = 1 << items.Length;
        for (var set = 1; set < all; set++)
        {
            _load[set] = _load[set & (set - 1)] + _model.Lengths[items[BitOperations.TrailingZeroCount(set)]];
            _alone[set] = Alone(_load[set]);
            _meter.Add(_bought.Length + (1 << BitOperations.PopCount((uint)set)));
        }

        for (var set = 1; set < all; set++)
        {
            Divide(set);
        }

        return _best[all - 1];
    }

    /// <summary>The part of a subset that its first piece is in.</summary>
    internal int PartOf(int set) => _part[set];

    /// <summary>Price and slack of one stock with a load.</summary>
    internal long Alone(long load)
    {
        var (price, length) = (long.MaxValue, 0);
        foreach (var k in _bought)
        {
            if (_model.StockLengths[k] >= load && _model.StockPrices[k] < price)
            {
                (price, length) = (_model.StockPrices[k], _model.StockLengths[k]);
            }
        }

        var slack = (length - load) >> _slackShift;
        return price == long.MaxValue ? TooLong : (price << PriceShift) - (slack * slack);
    }

    // The piece of the lowest bit goes with every subset of the rest in turn.
    private void Divide(int set)
    {
        unchecked
        {
            var (alone, best) = (_alone, _best);
            var low = set & -set;
            var rest = set ^ low;
            var (least, part) = (alone[set], set);
            for (var with = (rest - 1) & rest; with != rest; with = (with - 1) & rest)
            {
                var cost = alone[with | low] + best[rest ^ with];
                if (cost < least)
                {
                    (least, part) = (cost, with | low);
                }

                if (with == 0)
                {
                    break;
                }
            }

            (best[set], _part[set]) = (least, part);
        }
    }
}
