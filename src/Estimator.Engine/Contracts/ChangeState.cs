namespace Estimator.Engine.Contracts;

/// <summary>How far a change order is.</summary>
public enum ChangeState
{
    /// <summary>Not given to the customer yet.</summary>
    Draft = 1,

    /// <summary>With the customer.</summary>
    Sent,

    /// <summary>Accepted: part of the contract.</summary>
    Accepted,

    /// <summary>Declined.</summary>
    Declined,

    /// <summary>Taken back by the firm.</summary>
    Withdrawn,
}
