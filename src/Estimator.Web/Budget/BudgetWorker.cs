namespace Estimator.Web.Budget;

/// <summary>Who does the work.</summary>
public enum BudgetWorker
{
    /// <summary>An electrical firm.</summary>
    Firm = 1,

    /// <summary>The owner, where the law of the place lets him.</summary>
    Owner,

    /// <summary>Not known: counted as a firm, and the range widens.</summary>
    NotSure,
}
