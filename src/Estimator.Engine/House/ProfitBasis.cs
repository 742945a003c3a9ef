namespace Estimator.Engine.House;

/// <summary>What profit is a share of.</summary>
public enum ProfitBasis
{
    /// <summary>Of cost.</summary>
    Markup = 1,

    /// <summary>Of price.</summary>
    Margin,
}
