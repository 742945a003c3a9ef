namespace Estimator.Engine.House;

/// <summary>What is not known.</summary>
public enum UnknownTopic
{
    /// <summary>What the walls are made of.</summary>
    WallType = 1,

    /// <summary>Whether the attic can be reached.</summary>
    AtticAccess,

    /// <summary>Whether old outlets are grounded.</summary>
    GroundingPresent,

    /// <summary>What old wiring is there.</summary>
    OldWiring,

    /// <summary>Old outlets have no ground.</summary>
    Ungrounded,

    /// <summary>Old wiring is knob and tube.</summary>
    KnobAndTube,

    /// <summary>Old branch circuits are of aluminium.</summary>
    AluminiumWiring,

    /// <summary>Old circuits share neutrals.</summary>
    SharedNeutrals,

    /// <summary>Make and series of the panel.</summary>
    PanelMake,

    /// <summary>Ampacity and condition of the service.</summary>
    Service,

    /// <summary>Anything else.</summary>
    Other,
}
