using System.Runtime.CompilerServices;
using Estimator.Engine.Explanations;
using Estimator.Engine.Rules;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;
using Estimator.Web.Pricing;

namespace Estimator.Web.Labor;

/// <summary>How long the crew is on the job.</summary>
/// <remarks>Hours over the productive share are paid; the crew shares them; days are those of a week without overtime. Source: rates of the bid, table bid_defaults.</remarks>
public sealed record CrewTime
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = FigurePages.Crew;

    private static readonly ConditionalWeakTable<PricedJob, CrewTime> Known = [];

    /// <summary>Hands of the crew.</summary>
    public required Fact Hands { get; init; }

    /// <summary>Hours that are paid for: those of the work, and driving, setting up and clearing away.</summary>
    public required Fact PaidHours { get; init; }

    /// <summary>Days of the crew.</summary>
    public required Fact CrewDays { get; init; }

    /// <summary>Days on the calendar, days off in them.</summary>
    public required Fact CalendarDays { get; init; }

    /// <summary>What explains them.</summary>
    public required FigureSource Source { get; init; }

    /// <summary>The time of a priced job.</summary>
    public static CrewTime Of(PricedJob priced) => Known.GetValue(priced, Draw);

    private static CrewTime Draw(PricedJob priced)
    {
        var (page, bid) = (new PageWriter(PageNumber), priced.Estimate.Bid);
        var productive = BidFacts.Rate(bid, "productive_percent") ?? BidDefaults.ProductivePercent.Read(page, Unit.Percent);
        var helpers = BidFacts.Rate(bid, "helpers_per_electrician") ?? BidDefaults.HelpersPerElectrician.Read(page, Unit.Each);
        var hands = page.Compute(Operation.Sum, "crew-hands", "Hands of the crew", Unit.Each, page.Constant("Electrician", 1, Unit.Each), helpers);
        var onePercent = page.Compute(Operation.Quotient, "paid-hours", "Hours for a hundredth of the productive share", Unit.Hours, priced.Estimate.Labor.Total, productive);
        var paid = page.Compute(Operation.Product, "paid-hours", "Paid hours", Unit.Hours, onePercent, page.Constant("Hundredths", 100));
        var (week, days) = (BidDefaults.PaidHoursAWeek.Read(page, Unit.Hours), BidDefaults.WorkingDaysAWeek.Read(page, Unit.Each));
        var day = page.Compute(Operation.Quotient, "paid-day", "Paid hours of a day", Unit.Hours, week, days);
        var share = page.Compute(Operation.Quotient, "crew-days", "Paid hours of each hand", Unit.Hours, paid, hands);
        var crewDays = page.Compute(Operation.Quotient, "crew-days", "Days of the crew", Unit.Each, share, day);
        var one = page.Constant("Whole days", 1, Unit.Each);
        var started = page.Compute(Operation.RoundUp, "started-days", "Days begun", Unit.Each, crewDays, one);
        var weeks = page.Compute(Operation.Quotient, "calendar-days", "Weeks", Unit.Factor, started, days);
        var worked = page.Compute(Operation.Product, "calendar-days", "Days on the calendar", Unit.Each, weeks, page.Constant("Days of a week", 7, Unit.Each));
        return new CrewTime
        {
            Hands = hands,
            PaidHours = paid,
            CrewDays = crewDays,
            CalendarDays = page.Compute(
                Operation.RoundUp, "calendar-days", "Days on the calendar, begun ones counted", Unit.Each,
                page.Sum("calendar-days", "Days on the calendar with the utility's", Unit.Each, priced.Estimate.Labor.WaitDays is { } wait ? [worked, wait] : [worked]), one),
            Source = priced.Source.With(page.ToPage()),
        };
    }
}
