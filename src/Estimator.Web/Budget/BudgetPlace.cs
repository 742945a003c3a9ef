namespace Estimator.Web.Budget;

/// <summary>What is wired.</summary>
public enum BudgetPlace
{
    /// <summary>A basement.</summary>
    Basement = 1,

    /// <summary>Rooms that stand already, above ground.</summary>
    Rooms,

    /// <summary>An addition.</summary>
    Addition,
}
