namespace Estimator.Engine.Payments;

/// <summary>What happened to an invoice.</summary>
public enum InvoiceEventKind
{
    /// <summary>It was given to the customer.</summary>
    Sent = 1,

    /// <summary>Money came.</summary>
    Paid,

    /// <summary>It was written in error and asks for nothing.</summary>
    Withdrawn,
}
