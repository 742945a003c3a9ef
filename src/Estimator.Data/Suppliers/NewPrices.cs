using System.Collections.Immutable;
using Estimator.Engine.Purchase.PriceFiles;

namespace Estimator.Data.Suppliers;

/// <summary>What is written of a price file, all of it or nothing.</summary>
/// <param name="SupplierId">The supplier.</param>
/// <param name="After">Number of the file that the preview compared with; 0 where there was none.</param>
/// <param name="FileName">Name of the file.</param>
/// <param name="FileHash">SHA-256 of the file, as hexadecimal text.</param>
/// <param name="Who">Who has it read.</param>
/// <param name="ReadOn">The day on which it is read: the day of prices that say none.</param>
/// <param name="Matching">How its columns were matched; it is remembered.</param>
/// <param name="Changes">Its prices, and the packs that it names no more where they are to be withdrawn.</param>
public sealed record NewPrices(
    int SupplierId, int After, string FileName, string FileHash, string Who, DateOnly ReadOn, ColumnMatching Matching, ImmutableArray<PackChange> Changes);
