namespace Estimator.Engine.Wiring.Routing;

/// <summary>What a run carries.</summary>
public enum RunRole
{
    /// <summary>From the panel to the first box.</summary>
    HomeRun = 1,

    /// <summary>Unswitched, from box to box.</summary>
    Feed,

    /// <summary>Travellers between three-way or four-way switches.</summary>
    Travellers,

    /// <summary>Switched, from the last switch to a load or from load to load.</summary>
    SwitchedLeg,

    /// <summary>From a light that is fed to its switch and back: the hot goes out, the switched conductor returns.</summary>
    SwitchLoop,

    /// <summary>Between interconnected alarms.</summary>
    Interconnect,
}
