namespace Estimator.Documents.Papers;

/// <summary>Which paper of an estimate is written as a PDF.</summary>
public enum JobPaper
{
    /// <summary>The bid that a customer signs.</summary>
    Customer = 1,

    /// <summary>Load calculation and panel schedules, for the permit.</summary>
    Permit,

    /// <summary>What a crew takes along.</summary>
    Crew,

    /// <summary>An owner's budget.</summary>
    Budget,
}
