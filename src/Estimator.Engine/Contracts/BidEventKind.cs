namespace Estimator.Engine.Contracts;

/// <summary>What happened to a bid.</summary>
public enum BidEventKind
{
    /// <summary>It was given to the customer.</summary>
    Sent = 1,

    /// <summary>The customer accepted it: it is the contract.</summary>
    Accepted,

    /// <summary>The customer declined it.</summary>
    Declined,

    /// <summary>The firm took it back.</summary>
    Withdrawn,

    /// <summary>Its rough-in passed the inspection: what is in the wall stays.</summary>
    RoughInPassed,

    /// <summary>Its devices and panels are in: what goes is taken out again.</summary>
    TrimmedOut,
}
