namespace Estimator.Engine.Panels;

/// <summary>Where a breaker of a schedule comes from.</summary>
public enum BreakerOrigin
{
    /// <summary>It is there already and stays where it is.</summary>
    Existing = 1,

    /// <summary>It was elsewhere and is landed here in this job.</summary>
    Landed,

    /// <summary>A new branch circuit.</summary>
    Circuit,

    /// <summary>The feeder of another panel.</summary>
    Feeder,
}
