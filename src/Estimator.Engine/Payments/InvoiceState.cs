namespace Estimator.Engine.Payments;

/// <summary>How far an invoice is.</summary>
public enum InvoiceState
{
    /// <summary>Not given to the customer yet.</summary>
    Draft = 1,

    /// <summary>Given to the customer.</summary>
    Sent,

    /// <summary>Some of it was paid.</summary>
    PaidInPart,

    /// <summary>All of it was paid.</summary>
    Paid,

    /// <summary>It asks for nothing.</summary>
    Withdrawn,
}
