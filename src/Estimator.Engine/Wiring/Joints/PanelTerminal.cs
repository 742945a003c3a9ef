namespace Estimator.Engine.Wiring.Joints;

/// <summary>Where a conductor of a home run ends in the panel.</summary>
public enum PanelTerminal
{
    /// <summary>The breaker, or its first pole.</summary>
    Breaker = 1,

    /// <summary>The breaker's second pole.</summary>
    SecondPole,

    /// <summary>The neutral bar, or the neutral terminal of a breaker with ground-fault or arc-fault protection.</summary>
    Neutral,

    /// <summary>The ground bar.</summary>
    Ground,
}
