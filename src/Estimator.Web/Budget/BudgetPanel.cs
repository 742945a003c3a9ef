namespace Estimator.Web.Budget;

/// <summary>The panel that the new circuits start from.</summary>
public sealed record BudgetPanel
{
    /// <summary>The room it hangs in; empty for a part of the level that stays as it is.</summary>
    public string Room { get; init; } = "";

    /// <summary>Whether somebody has looked at it; else the figures below stand for nothing and the range widens.</summary>
    public bool Seen { get; init; }

    /// <summary>Rating of its main, in amperes.</summary>
    public int Amperes { get; init; } = 200;

    /// <summary>Breaker spaces in all.</summary>
    public int Spaces { get; init; } = 40;

    /// <summary>Spaces that are free.</summary>
    public int Free { get; init; } = 12;
}
