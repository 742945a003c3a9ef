using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>When and how the price is paid. Each value left out follows the payment table.</summary>
public sealed record PaymentTerms
{
    /// <summary>What is paid before the work starts, as a share of the price.</summary>
    public Percent? DepositPercent { get; init; }

    /// <summary>The most that may be asked before the work starts, as a share of the price. The law sets it in many states.</summary>
    public Percent? DepositCapPercent { get; init; }

    /// <summary>The most that may be asked before the work starts, in dollars. The law sets it in some states.</summary>
    public Money? DepositCap { get; init; }

    /// <summary>Share of the work done that is paid with the last invoice only.</summary>
    public Percent? RetainagePercent { get; init; }

    /// <summary>Days from an invoice to the day on which it is due.</summary>
    public int? DaysToPay { get; init; }

    /// <summary>Charge on what is paid late, as a share of it for each month.</summary>
    public Percent? LateChargePercent { get; init; }

    /// <summary>Own milestones with their shares of the price; none lets the values follow from the cost of each phase.</summary>
    public ImmutableArray<Milestone> Milestones { get; init; } = [];
}
