namespace Estimator.Engine.Payments;

/// <summary>What an invoice asks for.</summary>
public enum InvoiceKind
{
    /// <summary>The deposit before the work starts.</summary>
    Deposit = 1,

    /// <summary>Work done since the last one.</summary>
    Progress,

    /// <summary>All that is left, and what was retained.</summary>
    Final,
}
