namespace Estimator.Data.Suppliers;

/// <summary>A price file that was read.</summary>
/// <param name="SupplierId">The supplier.</param>
/// <param name="Number">1 for its first file.</param>
/// <param name="FileName">Name of the file.</param>
/// <param name="FileHash">SHA-256 of the file, as hexadecimal text.</param>
/// <param name="Who">Who had it read.</param>
/// <param name="At">When, UTC.</param>
/// <param name="Prices">How many prices were written.</param>
/// <param name="Withdrawn">How many packs the supplier offers no more.</param>
public sealed record PriceImport(int SupplierId, int Number, string FileName, string FileHash, string Who, DateTimeOffset At, int Prices, int Withdrawn);
