namespace Estimator.Web.Budget;

/// <summary>The questions, in the order in which they are asked.</summary>
public enum BudgetStep
{
    /// <summary>What is wired.</summary>
    Place = 1,

    /// <summary>Which rooms, and how large.</summary>
    Rooms,

    /// <summary>Whether the walls are open.</summary>
    Walls,

    /// <summary>What is wanted in each room.</summary>
    Wishes,

    /// <summary>What gets a supply of its own.</summary>
    Supplies,

    /// <summary>The panel.</summary>
    Panel,

    /// <summary>Who does the work.</summary>
    Worker,

    /// <summary>Local prices.</summary>
    Prices,

    /// <summary>The budget is there.</summary>
    Done,
}
