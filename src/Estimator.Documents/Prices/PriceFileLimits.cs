namespace Estimator.Documents.Prices;

/// <summary>How large a price file may be.</summary>
public static class PriceFileLimits
{
    /// <summary>Largest file, in bytes.</summary>
    public const long Bytes = 50_000_000;

    /// <summary>Most rows with something in them.</summary>
    public const int Rows = 100_000;

    /// <summary>Most columns.</summary>
    public const int Columns = 200;

    /// <summary>Longest text of a cell, in characters.</summary>
    public const int Cell = 10_000;

    /// <summary>Most text that a workbook's shared table may hold, in characters.</summary>
    public const int SharedText = 40_000_000;

    /// <summary>Most that the parts of a workbook may come to once unpacked, in bytes.</summary>
    public const long Unpacked = 1_000_000_000;
}
