using Estimator.Engine.Measures;

namespace Estimator.Data.Stock;

/// <summary>How large the fields of the shelf may be.</summary>
public static class StockLimits
{
    /// <summary>Longest label of a coil, in characters.</summary>
    public const int Label = 60;

    /// <summary>Most units of an item.</summary>
    public const int Count = 1_000_000;

    /// <summary>Longest piece.</summary>
    public static Length Piece { get; } = Length.FromFeet(100_000);
}
