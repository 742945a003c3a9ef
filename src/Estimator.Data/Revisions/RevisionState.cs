namespace Estimator.Data.Revisions;

/// <summary>What became of a saved revision.</summary>
public enum RevisionState
{
    /// <summary>Kept.</summary>
    Saved = 1,

    /// <summary>Given to the customer.</summary>
    Sent,

    /// <summary>Accepted by the customer.</summary>
    Accepted,

    /// <summary>Declined by the customer.</summary>
    Declined,
}
