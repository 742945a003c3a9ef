using System.Collections.Immutable;

namespace Estimator.Engine.Purchase.Cutting;

/// <summary>The cutting stock problem with several stock lengths: every piece is cut in one length from one stock, and the stocks cost as little as possible.</summary>
public sealed record CuttingProblem
{
    /// <summary>Longest length that the solver counts with.</summary>
    public const int LongestLength = 100_000_000;

    /// <summary>A problem.</summary>
    /// <param name="stocks">What can be had; one that can be bought in any number must hold the longest piece.</param>
    /// <param name="items">What is wanted.</param>
    /// <exception cref="ArgumentException">A length, price or number is out of range, or no stock of unlimited number holds the longest piece.</exception>
    public CuttingProblem(ImmutableArray<CuttingStock> stocks, ImmutableArray<CuttingItem> items)
    {
        foreach (var stock in stocks)
        {
            Demand(stock.Length is > 0 and <= LongestLength, nameof(stocks), $"a stock is {stock.Length} long; 1 to {LongestLength} is accepted");
            Demand(stock.Price is >= 0 and <= 1_000_000_000, nameof(stocks), $"a stock costs {stock.Price}; 0 to 1,000,000,000 is accepted");
            Demand(stock.Count is null or >= 0, nameof(stocks), $"there are {stock.Count} of a stock; 0 or more is accepted");
        }

        foreach (var item in items)
        {
            Demand(item.Length is > 0 and <= LongestLength, nameof(items), $"a piece is {item.Length} long; 1 to {LongestLength} is accepted");
            Demand(item.Quantity is >= 0 and <= 100_000, nameof(items), $"{item.Quantity} pieces are wanted; 0 to 100,000 is accepted");
        }

        var longest = items.Where(i => i.Quantity > 0).Select(i => i.Length).DefaultIfEmpty(0).Max();
        Demand(longest == 0 || stocks.Any(s => s.Count is null && s.Length >= longest), nameof(stocks), $"none that can be bought in any number holds the longest piece, {longest}");
        (Stocks, Items) = (stocks, items);
    }

    /// <summary>What can be had.</summary>
    public ImmutableArray<CuttingStock> Stocks { get; }

    /// <summary>What is wanted.</summary>
    public ImmutableArray<CuttingItem> Items { get; }

    private static void Demand(bool holds, string parameter, string found)
    {
        if (!holds)
        {
            throw new ArgumentException(found, parameter);
        }
    }
}
