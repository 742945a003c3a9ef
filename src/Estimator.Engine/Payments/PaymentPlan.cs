using System.Collections.Immutable;
using Estimator.Engine.Explanations;

namespace Estimator.Engine.Payments;

/// <summary>When and how the price of a bid is paid.</summary>
public sealed record PaymentPlan
{
    /// <summary>The schedule of values: its lines add up to the price exactly.</summary>
    public required ImmutableArray<ScheduleLine> Lines { get; init; }

    /// <summary>Their sum, which is the price.</summary>
    public required Fact Total { get; init; }

    /// <summary>What is paid before the work starts, in whole cents.</summary>
    public required Fact Deposit { get; init; }

    /// <summary>Share of the work done that is paid last, percent.</summary>
    public required Fact RetainagePercent { get; init; }

    /// <summary>Days from an invoice to the day on which it is due.</summary>
    public required Fact DaysToPay { get; init; }

    /// <summary>Charge for each month on what is paid late, percent.</summary>
    public required Fact LateChargePercent { get; init; }

    /// <summary>Page of the explanation book.</summary>
    public required ExplanationPage Page { get; init; }

    /// <summary>The terms as a contract keeps them.</summary>
    public ContractTerms Terms => new(Deposit.AsMoney().Value, RetainagePercent.Value, decimal.ToInt32(DaysToPay.Value), LateChargePercent.Value);

    /// <summary>The lines as a contract keeps them.</summary>
    public ImmutableArray<ContractLine> Frozen => [.. Lines.Select(l => new ContractLine(l.Id, l.Title, l.Value.AsMoney().Value))];
}
