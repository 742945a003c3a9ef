namespace Estimator.Engine.Panels;

/// <summary>Why a circuit exists.</summary>
public enum CircuitKind
{
    /// <summary>Kitchen and dining receptacles, 20 A.</summary>
    SmallAppliance = 1,

    /// <summary>Laundry receptacles, 20 A.</summary>
    Laundry,

    /// <summary>Bathroom receptacles, 20 A.</summary>
    Bathroom,

    /// <summary>Garage receptacles, 20 A.</summary>
    Garage,

    /// <summary>One piece of equipment.</summary>
    Individual,

    /// <summary>General receptacles.</summary>
    Receptacles,

    /// <summary>Lights, fans and alarms.</summary>
    Lighting,

    /// <summary>Lights and receptacles together.</summary>
    General,
}
