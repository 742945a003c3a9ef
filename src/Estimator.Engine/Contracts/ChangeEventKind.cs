namespace Estimator.Engine.Contracts;

/// <summary>What happened to a change order.</summary>
public enum ChangeEventKind
{
    /// <summary>It was given to the customer.</summary>
    Sent = 1,

    /// <summary>The customer accepted it.</summary>
    Accepted,

    /// <summary>The customer declined it.</summary>
    Declined,

    /// <summary>The firm took it back.</summary>
    Withdrawn,
}
