namespace Estimator.Data.Suppliers;

/// <summary>How large the fields of a supplier and of a price file may be.</summary>
public static class SupplierLimits
{
    /// <summary>Longest name, account, contact, file name, item number, make or series, in characters.</summary>
    public const int Name = 200;

    /// <summary>Longest note, in characters.</summary>
    public const int Note = 2_000;

    /// <summary>Highest charge or minimum, in dollars.</summary>
    public const int Dollars = 1_000_000;
}
