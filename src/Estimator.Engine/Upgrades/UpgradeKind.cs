namespace Estimator.Engine.Upgrades;

/// <summary>How a full panel is given room.</summary>
public enum UpgradeKind
{
    /// <summary>Circuits that are there share spaces as tandems, where the panel takes them.</summary>
    Tandems = 1,

    /// <summary>A subpanel beside it takes what is new.</summary>
    Subpanel,

    /// <summary>A larger panel in its place, for the service panel with a larger service.</summary>
    LargerPanel,
}
