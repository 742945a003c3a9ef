namespace Estimator.Engine.Catalogue;

/// <summary>A phase of the work.</summary>
public enum WorkPhase
{
    /// <summary>Walk, mark, set up.</summary>
    Layout = 1,

    /// <summary>Boxes, bores, cable, make-up.</summary>
    RoughIn,

    /// <summary>Panel, breakers, grounding.</summary>
    Panel,

    /// <summary>Devices, plates, luminaires, appliances.</summary>
    TrimOut,

    /// <summary>Tests, labels, inspections.</summary>
    TestAndInspection,
}
