namespace Estimator.Engine.Wiring.Joints;

/// <summary>What a conductor is for.</summary>
public enum ConductorFunction
{
    /// <summary>Unswitched hot.</summary>
    Hot = 1,

    /// <summary>Switched hot.</summary>
    Switched,

    /// <summary>Traveller.</summary>
    Traveller,

    /// <summary>Neutral.</summary>
    Neutral,

    /// <summary>Equipment grounding conductor.</summary>
    Ground,

    /// <summary>Alarm interconnect.</summary>
    Interconnect,

    /// <summary>None: it came with the cable, and both its ends are capped.</summary>
    Spare,
}
