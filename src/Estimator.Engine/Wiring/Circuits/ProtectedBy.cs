namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Where the ground-fault protection of a circuit sits.</summary>
internal enum ProtectedBy
{
    /// <summary>In the breaker, or nowhere since no outlet needs it or each device has it already.</summary>
    Breaker = 1,

    /// <summary>In the first receptacle, everything behind it protected.</summary>
    First,

    /// <summary>In each receptacle that needs it.</summary>
    Each,
}
