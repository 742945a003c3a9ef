namespace Estimator.Engine.Panels;

/// <summary>What a breaker protects against besides overcurrent.</summary>
public enum Protection
{
    /// <summary>Nothing more.</summary>
    Plain = 1,

    /// <summary>Arc faults.</summary>
    ArcFault,

    /// <summary>Ground faults.</summary>
    GroundFault,

    /// <summary>Arc and ground faults.</summary>
    DualFunction,
}
