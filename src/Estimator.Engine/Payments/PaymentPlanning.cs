using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Payments;

/// <summary>Makes the schedule of values of a bid and its terms of payment.</summary>
/// <remarks>
/// Overhead, contingency, profit and rounding are spread over the lines by their direct cost, so that the lines add up to the price. The deposit is the least of the share that
/// was asked for and the caps that were stated: the law caps it in many states (California, Business and Professions Code 7159.5(a)(3): $1,000 or 10%, whichever is less).
/// </remarks>
public static class PaymentPlanning
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = 21;

    /// <summary>The payment plan of an estimate.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="catalogue">The catalogue that it was made with.</param>
    public static PaymentPlan Compute(JobEstimate estimate, PartsCatalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        var (page, job) = (new PageWriter(PageNumber), estimate.House.Job);
        var terms = job.Payment ?? new PaymentTerms();
        var price = Cents.Round(page, estimate.Bid.Price);
        var lines = Schedule(page, estimate, catalogue, terms, price);
        return new PaymentPlan
        {
            Lines = lines,
            Total = page.Sum("schedule-total", "Sum of the schedule of values", Unit.Dollars, [.. lines.Select(l => l.Value)]),
            Deposit = Deposit(page, terms, price),
            RetainagePercent = Share(page, terms.RetainagePercent?.ToHundredths(), "retainage_percent", PaymentDefaults.RetainagePercent, Unit.Percent),
            DaysToPay = Share(page, terms.DaysToPay, "days_to_pay", PaymentDefaults.DaysToPay, Unit.Each),
            LateChargePercent = Share(page, terms.LateChargePercent?.ToHundredths(), "late_charge_percent", PaymentDefaults.LateChargePercent, Unit.Percent),
            Page = page.ToPage(),
        };
    }

    private static ImmutableArray<ScheduleLine> Schedule(PageWriter page, JobEstimate estimate, PartsCatalogue catalogue, PaymentTerms terms, Fact price)
    {
        var parts = terms.Milestones.IsEmpty
            ? PhaseWeights.Of(page, estimate, catalogue)
            : [.. terms.Milestones.Select((m, i) => (m.Id, m.Name, page.Given($"$.payment.milestones[{i}].share_percent", m.Name, m.SharePercent.ToHundredths(), Unit.Percent))).Where(m => m.Item3.Value > 0)];
        return parts.IsEmpty
            ? [new ScheduleLine("work", "All of the work", price)]
            : [.. parts.Zip(PriceShares.Divide(page, price, [.. parts.Select(p => (p.Item2, p.Item3))]), (p, value) => new ScheduleLine(p.Item1, p.Item2, value))];
    }

    private static Fact Deposit(PageWriter page, PaymentTerms terms, Fact price)
    {
        var percent = Share(page, terms.DepositPercent?.ToHundredths(), "deposit_percent", PaymentDefaults.DepositPercent, Unit.Percent);
        List<Fact> most = [page.Compute(Operation.PercentOf, "deposit", "Deposit asked for", Unit.Dollars, price, percent)];
        if (terms.DepositCapPercent is { } capPercent)
        {
            most.Add(page.Compute(Operation.PercentOf, "deposit-cap", "Most that may be asked, by share", Unit.Dollars, price, page.Given("$.payment.deposit_cap_percent", "Most that may be asked", capPercent.ToHundredths(), Unit.Percent)));
        }

        if (terms.DepositCap is { } cap)
        {
            most.Add(page.Given("$.payment.deposit_cap", "Most that may be asked, in dollars", cap.ToDollars(), Unit.Dollars));
        }

        var least = page.Compute(Operation.Minimum, "deposit-cap", "Deposit within its caps", Unit.Dollars, [.. most]);
        return page.Compute(Operation.RoundDown, "deposit", "Deposit, to the cent below", Unit.Dollars, least, PriceShares.Cent(page));
    }

    private static Fact Share(PageWriter page, decimal? own, string field, RuleRow row, Unit unit) =>
        own is { } value ? page.Given($"$.payment.{field}", row.Label, value, unit) : row.Read(page, unit);
}
