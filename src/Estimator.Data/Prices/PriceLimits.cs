namespace Estimator.Data.Prices;

/// <summary>How large the fields of a local price may be.</summary>
public static class PriceLimits
{
    /// <summary>Longest item id and longest supplier's name, in characters.</summary>
    public const int Name = 200;

    /// <summary>Longest note, in characters.</summary>
    public const int Note = 10_000;

    /// <summary>Units in the largest pack.</summary>
    public const int Pack = 1_000_000;

    /// <summary>Highest price of a pack, in dollars.</summary>
    public const int Dollars = 10_000_000;
}
