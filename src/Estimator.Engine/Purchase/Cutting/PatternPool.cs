namespace Estimator.Engine.Purchase.Cutting;

/// <summary>Ways of cutting one stock, each kept once, in flat arrays.</summary>
internal sealed class PatternPool(CuttingModel model)
{
    private readonly HashSet<ulong> _known = [];
    private int[] _starts = new int[1024];
    private int[] _items = new int[8192];
    private int[] _counts = new int[8192];
    private int[] _stocks = new int[1023];

    internal int Count { get; private set; }

    internal int StockOf(int pattern) => _stocks[pattern];

    internal ReadOnlySpan<int> ItemsOf(int pattern) => _items.AsSpan(_starts[pattern].._starts[pattern + 1]);

    internal ReadOnlySpan<int> CountsOf(int pattern) => _counts.AsSpan(_starts[pattern].._starts[pattern + 1]);

    /// <summary>Adds a pattern, cut from the cheapest stock that holds it unless the stock is one of few.</summary>
    internal void Add(ReadOnlySpan<int> countOfItem, int stock)
    {
        var load = 0L;
        var hash = 14695981039346656037UL;
        for (var i = 0; i < countOfItem.Length; i++)
        {
            load += (long)countOfItem[i] * model.Lengths[i];
            hash = countOfItem[i] == 0 ? hash : unchecked((hash ^ ((ulong)i << 20 | (uint)countOfItem[i])) * 1099511628211UL);
        }

        stock = model.Limited(stock) ? stock : model.CheapestFor(load);
        if (load == 0 || !_known.Add(unchecked((hash ^ (ulong)stock) * 1099511628211UL)))
        {
            return;
        }

        if (Count + 2 >= _starts.Length)
        {
            Array.Resize(ref _starts, 2 * _starts.Length);
            Array.Resize(ref _stocks, 2 * _stocks.Length + 1);
        }

        var end = _starts[Count];
        if (end + countOfItem.Length >= _items.Length)
        {
            Array.Resize(ref _items, 2 * _items.Length);
            Array.Resize(ref _counts, 2 * _counts.Length);
        }

        for (var i = 0; i < countOfItem.Length; i++)
        {
            if (countOfItem[i] > 0)
            {
                (_items[end], _counts[end++]) = (i, countOfItem[i]);
            }
        }

        _stocks[Count] = stock;
        _starts[++Count] = end;
    }
}
