namespace Estimator.Data.Contracts;

/// <summary>How large the fields of bids, change orders and invoices may be.</summary>
public static class ContractLimits
{
    /// <summary>Longest name of whom a bid goes to, in characters.</summary>
    public const int To = 200;

    /// <summary>Longest note or reason, in characters.</summary>
    public const int Note = 2_000;

    /// <summary>Most days that a change adds.</summary>
    public const int Days = 3_650;

    /// <summary>Number that the company's first invoice gets.</summary>
    public const int FirstInvoice = 1001;
}
