using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase.PriceFiles;

/// <summary>What a price file does to the price of a pack.</summary>
/// <param name="Kind">New, changed, unchanged or gone.</param>
/// <param name="Item">The item.</param>
/// <param name="PackSize">Pieces or feet in the pack.</param>
/// <param name="Old">The price until now; null where there was none.</param>
/// <param name="New">The price of the file; null where it names none.</param>
/// <param name="Row">The row of the file; null where it names none.</param>
public sealed record PackChange(PackChangeKind Kind, string Item, int PackSize, Money? Old, Money? New, PriceRow? Row)
{
    private const int Hundred = 100;

    /// <summary>By how many hundredths the price rises; null where there is no old price above zero, or no new one. Unrounded.</summary>
    public decimal? RisePercent => Old is { } old && New is { } price && old > Money.Zero ? (price - old).ToDollars() / old.ToDollars() * Hundred : null;
}
