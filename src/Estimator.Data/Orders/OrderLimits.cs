namespace Estimator.Data.Orders;

/// <summary>How large the fields of an order may be.</summary>
public static class OrderLimits
{
    /// <summary>Longest number of an order, in characters.</summary>
    public const int Number = 40;

    /// <summary>Longest note, in characters.</summary>
    public const int Note = 2_000;

    /// <summary>Number that the company's first order gets.</summary>
    public const int FirstNumber = 1001;
}
