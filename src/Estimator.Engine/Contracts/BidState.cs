namespace Estimator.Engine.Contracts;

/// <summary>What became of a bid.</summary>
public enum BidState
{
    /// <summary>Kept, and not given to anybody.</summary>
    Saved = 1,

    /// <summary>With the customer.</summary>
    Sent,

    /// <summary>Accepted by the customer: the contract.</summary>
    Accepted,

    /// <summary>Declined by the customer.</summary>
    Declined,

    /// <summary>Taken back by the firm.</summary>
    Withdrawn,

    /// <summary>With the customer, and older than it stands.</summary>
    Expired,
}
