namespace Estimator.Data.Jobs;

/// <summary>Where a job stands.</summary>
public enum JobState
{
    /// <summary>Being estimated.</summary>
    Draft = 1,

    /// <summary>The bid is with the customer.</summary>
    Sent,

    /// <summary>The customer accepted.</summary>
    Won,

    /// <summary>The customer declined.</summary>
    Lost,

    /// <summary>The work is done.</summary>
    Finished,
}
