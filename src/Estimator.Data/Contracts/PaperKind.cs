namespace Estimator.Data.Contracts;

/// <summary>What a kept document was.</summary>
public enum PaperKind
{
    /// <summary>A bid; its number is the revision's.</summary>
    Bid = 1,

    /// <summary>A change order.</summary>
    Change,

    /// <summary>An invoice.</summary>
    Invoice,
}
