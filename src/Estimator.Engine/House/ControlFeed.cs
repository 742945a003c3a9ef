namespace Estimator.Engine.House;

/// <summary>Where the feed of a control with one switch box comes in.</summary>
public enum ControlFeed
{
    /// <summary>Whichever costs less on the planning costs.</summary>
    Cheaper = 1,

    /// <summary>At the switch; the light hangs on it.</summary>
    AtSwitch,

    /// <summary>At the light; a cable goes down to the switch and brings the switched conductor back.</summary>
    AtLight,
}
