namespace Estimator.Engine.Panels;

/// <summary>Which leg of the bus a breaker stands on. Rows of a panel alternate between the legs.</summary>
public enum PanelLeg
{
    /// <summary>The first row, the third, and so on.</summary>
    A = 1,

    /// <summary>The second row, the fourth, and so on.</summary>
    B,

    /// <summary>Both, as every two-pole breaker.</summary>
    Both,
}
