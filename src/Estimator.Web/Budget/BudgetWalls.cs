namespace Estimator.Web.Budget;

/// <summary>Whether walls are open while the wiring is done.</summary>
public enum BudgetWalls
{
    /// <summary>Bare studs.</summary>
    Open = 1,

    /// <summary>Drywall or plaster stays on.</summary>
    Finished,

    /// <summary>Not known: counted as finished, and the range widens.</summary>
    NotSure,
}
