namespace Estimator.Engine.Purchase.Cutting;

/// <summary>Makes whole plans from the linear program: takes the patterns that it takes wholly, rounds up one or several of the rest, and solves again for what is left.</summary>
internal sealed class Diving
{
    private const int FewPieces = 12;
    private const int RoundsAgain = 12;

    private readonly CuttingModel _model;
    private readonly StepMeter _meter;
    private readonly ColumnGeneration _columns;
    private readonly BestFit _bestFit;
    private readonly int[] _demands;
    private readonly int[] _limits;
    private DrawnNumbers _drawn;

    internal Diving(CuttingModel model, StepMeter meter, ColumnGeneration columns)
    {
        (_model, _meter, _columns) = (model, meter, columns);
        _bestFit = new BestFit(model, meter);
        _demands = new int[model.Demands.Length];
        _limits = new int[model.StockLimits.Length];
        _drawn = new DrawnNumbers(model.Seed);
    }

    /// <summary>One plan.</summary>
    /// <param name="bold">How much of a pattern must be taken for it to be rounded up along with others.</param>
    /// <param name="stray">One in how many choices is not the best; 0 for none.</param>
    internal List<Bin> Dive(double bold, int stray)
    {
        var bins = new List<Bin>();
        _model.Demands.CopyTo(_demands, 0);
        _model.StockLimits.CopyTo(_limits, 0);
        while (_demands.Sum() > FewPieces && !_meter.Spent)
        {
            _columns.Solve(_demands, _limits, bins.Count == 0 ? int.MaxValue : RoundsAgain);
            var before = bins.Count;
            Round(bins, bold, stray);
            if (bins.Count == before)
            {
                break;
            }
        }

        var rest = new Incumbent(_model);
        for (var k = 0; k < _model.StockLengths.Length; k++)
        {
            if (!_model.Limited(k) && _demands.Any(d => d > 0))
            {
                rest.Offer(_bestFit.Plan(_demands, _model.StockLengths[k], _limits));
            }
        }

        bins.AddRange(rest.Bins);
        return bins;
    }

    private void Round(List<Bin> bins, double bold, int stray)
    {
        var master = _columns.Master;
        var (best, most) = (-1, 0.0);
        var strays = stray > 0 && _drawn.Below(stray) == 0;
        for (var r = 0; r < master.Rows; r++)
        {
            var pattern = master.BasicIn(r);
            if (pattern < 0)
            {
                continue;
            }

            var value = master.ValueIn(r);
            var whole = (int)Math.Floor(value + 1e-6);
            for (var n = 0; n < whole && Fits(pattern); n++)
            {
                Take(bins, pattern);
            }

            var part = value - whole;
            if (part >= bold && Fits(pattern))
            {
                Take(bins, pattern);
                continue;
            }

            var weight = strays ? part * (1 + _drawn.Below(100)) : part;
            if (weight > most + 1e-9 && Fits(pattern))
            {
                (best, most) = (pattern, weight);
            }
        }

        if (best >= 0 && Fits(best))
        {
            Take(bins, best);
        }
    }

    private bool Fits(int pattern)
    {
        var items = _columns.Pool.ItemsOf(pattern);
        var counts = _columns.Pool.CountsOf(pattern);
        for (var n = 0; n < items.Length; n++)
        {
            if (counts[n] > _demands[items[n]])
            {
                return false;
            }
        }

        return _limits[_columns.Pool.StockOf(pattern)] > 0;
    }

    private void Take(List<Bin> bins, int pattern)
    {
        var items = _columns.Pool.ItemsOf(pattern);
        var counts = _columns.Pool.CountsOf(pattern);
        var stock = _columns.Pool.StockOf(pattern);
        var pieces = new List<int>();
        for (var n = 0; n < items.Length; n++)
        {
            _demands[items[n]] -= counts[n];
            for (var c = 0; c < counts[n]; c++)
            {
                pieces.Add(items[n]);
            }
        }

        _limits[stock] -= _model.Limited(stock) ? 1 : 0;
        bins.Add(new Bin(stock, [.. pieces]));
    }
}
