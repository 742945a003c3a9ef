using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Labor;

/// <summary>The crew: its hands, what an hour of its work costs, and the hours that it drives.</summary>
/// <remarks>
/// An hour is the average wage of the hands with burden on straight wages and, beside it, the premium on overtime; over the productive share where driving is part of that.
/// Where driving is counted as hours no share is taken. Source: common practice, no source; rates by the rows of table bid_defaults.
/// </remarks>
public sealed record CrewRate
{
    /// <summary>Leads and electricians.</summary>
    public required Fact Electricians { get; init; }

    /// <summary>Apprentices and helpers.</summary>
    public required Fact Helpers { get; init; }

    /// <summary>All hands.</summary>
    public required Fact Hands { get; init; }

    /// <summary>Loaded cost of an hour, to the cent.</summary>
    public required Fact HourCost { get; init; }

    /// <summary>Share of paid hours that is productive; null where driving is counted as hours.</summary>
    public Fact? ProductivePercent { get; init; }

    /// <summary>Hours of driving; null where driving is in the productive share.</summary>
    public Fact? DriveHours { get; init; }

    /// <summary>The crew of a job.</summary>
    /// <param name="settings">The bid settings.</param>
    /// <param name="work">Hours of the work.</param>
    /// <param name="page">The page that it is worked out on.</param>
    public static CrewRate Of(BidSettings settings, Fact work, PageWriter page) => new Making(settings, page).Make(work);

    /// <summary>Paid hours of a day, overtime in them.</summary>
    /// <param name="settings">The bid settings.</param>
    /// <param name="page">The page that it is worked out on.</param>
    public static Fact HoursADay(BidSettings settings, PageWriter page)
    {
        var week = BidDefaults.PaidHoursAWeek.Read(page, Unit.Hours);
        var paid = Overtime(settings, page) is { } overtime ? page.Compute(Operation.Sum, "overtime-week", "Paid hours of a week", Unit.Hours, week, overtime) : week;
        return page.Compute(Operation.Quotient, "paid-day", "Paid hours of a day", Unit.Hours, paid, BidDefaults.WorkingDaysAWeek.Read(page, Unit.Each));
    }

    /// <summary>Hours of the job that are paid for: work, and lost time or driving.</summary>
    /// <param name="work">Hours of the work.</param>
    /// <param name="page">The page that it is worked out on.</param>
    public Fact PaidHours(Fact work, PageWriter page) => DriveHours is { } driven
        ? page.Compute(Operation.Sum, "paid-hours", "Paid hours", Unit.Hours, work, driven)
        : OverShare(page, "paid-hours", ("Hours for a hundredth of the productive share", "Paid hours"), Unit.Hours, work, ProductivePercent!.Value);

    private static Fact OverShare(PageWriter page, string rule, (string Part, string Whole) labels, Unit unit, Fact amount, Fact share)
    {
        var onePercent = page.Compute(Operation.Quotient, rule, labels.Part, unit, amount, share);
        return page.Compute(Operation.Product, rule, labels.Whole, unit, onePercent, page.Constant("Hundredths", 100));
    }

    private static Fact? Overtime(BidSettings settings, PageWriter page) => settings.Crew?.OvertimeHoursAWeek is > 0 and var hours
        ? page.Given("$.bid.crew.overtime_hours_a_week", "Hours of overtime a week", hours, Unit.Hours)
        : null;

    private sealed class Making(BidSettings settings, PageWriter page)
    {
        private readonly CrewMix? _crew = settings.Crew;

        internal CrewRate Make(Fact work)
        {
            var electrician = Dollars(settings.ElectricianWage, "electrician_wage", BidDefaults.ElectricianWage);
            var helper = Dollars(settings.HelperWage, "helper_wage", BidDefaults.HelperWage);
            var (electricians, wagesOfElectricians) = Electricians(electrician);
            var helpers = Helpers(electricians);
            var wages = page.Compute(Operation.Sum, "crew-wage", "Wages of the crew", Unit.Dollars, wagesOfElectricians, page.Compute(Operation.Product, "crew-wage", "Helpers' wages", Unit.Dollars, helper, helpers));
            var hands = page.Compute(Operation.Sum, "crew-hands", "Hands", Unit.Each, electricians, helpers);
            var average = page.Compute(Operation.Quotient, "crew-wage", "Average wage of the crew", Unit.Dollars, wages, hands);
            var burden = page.Compute(Operation.PercentOf, "burden", "Burden on wages", Unit.Dollars, average, Share(settings.BurdenPercent, "burden_percent", BidDefaults.BurdenPercent));
            var loaded = Overtime(settings, page) is { } overtime
                ? page.Compute(Operation.Sum, "loaded-wage", "Wage with burden and overtime", Unit.Dollars, average, burden, Premium(average, overtime))
                : page.Compute(Operation.Sum, "loaded-wage", "Wage with burden", Unit.Dollars, average, burden);
            var byHours = settings.Travel is TravelBy.Hours;
            var productive = byHours ? (Fact?)null : Share(settings.ProductivePercent, "productive_percent", BidDefaults.ProductivePercent);
            var hour = productive is { } share ? OverShare(page, "productive-hour", ("Hundredth of a productive hour", "Loaded cost of a productive hour"), Unit.Dollars, loaded, share) : loaded;
            return new CrewRate
            {
                Electricians = electricians,
                Helpers = helpers,
                Hands = hands,
                HourCost = Cents.Round(page, hour),
                ProductivePercent = productive,
                DriveHours = byHours ? Driving(work, hands) : null,
            };
        }

        // Without a stated mix the crew is one electrician, whose wage stands for itself.
        private (Fact Count, Fact Wages) Electricians(Fact wage)
        {
            if (_crew is not { Leads: not null } and not { Electricians: not null })
            {
                return (page.Constant("Electrician", 1, Unit.Each), wage);
            }

            var leads = page.Given("$.bid.crew.leads", "Leads", _crew.Leads ?? 0, Unit.Each);
            var others = page.Given("$.bid.crew.electricians", "Electricians", _crew.Electricians ?? (_crew.Leads > 0 ? 0 : 1), Unit.Each);
            var raised = _crew.LeadWage is { } own
                ? page.Given("$.bid.crew.lead_wage", "Wage of a lead", own.ToDollars(), Unit.Dollars)
                : page.Compute(Operation.Sum, "lead-wage", "Wage of a lead", Unit.Dollars, wage, page.Compute(
                    Operation.PercentOf, "lead-wage", "Above the electrician's wage", Unit.Dollars, wage, BidDefaults.LeadWagePercent.Read(page, Unit.Percent)));
            return (page.Compute(Operation.Sum, "crew-electricians", "Leads and electricians", Unit.Each, leads, others), page.Compute(
                Operation.Sum, "crew-wage", "Wages of leads and electricians", Unit.Dollars,
                page.Compute(Operation.Product, "crew-wage", "Leads' wages", Unit.Dollars, raised, leads),
                page.Compute(Operation.Product, "crew-wage", "Electricians' wages", Unit.Dollars, wage, others)));
        }

        private Fact Helpers(Fact electricians)
        {
            if (_crew?.Helpers is { } counted)
            {
                return page.Given("$.bid.crew.helpers", "Apprentices and helpers", counted, Unit.Each);
            }

            var each = settings.HelpersPerElectrician is { } own
                ? page.Given("$.bid.helpers_per_electrician", "Helpers for each electrician", own, Unit.Each)
                : BidDefaults.HelpersPerElectrician.Read(page, Unit.Each);
            return electricians.Value == 1 ? each : page.Compute(Operation.Product, "crew-helpers", "Helpers of the crew", Unit.Each, each, electricians);
        }

        // The premium is paid on the hours beyond the week and spread over all of them; burden is a share of straight wages and does not grow with it.
        private Fact Premium(Fact average, Fact overtime)
        {
            var week = page.Compute(Operation.Sum, "overtime-week", "Paid hours of a week", Unit.Hours, BidDefaults.PaidHoursAWeek.Read(page, Unit.Hours), overtime);
            var extra = page.Compute(Operation.PercentOf, "overtime-premium", "Premium of an hour of overtime", Unit.Dollars, average, BidDefaults.OvertimePremiumPercent.Read(page, Unit.Percent));
            return page.Compute(
                Operation.Quotient, "overtime-premium", "Premium spread over the week", Unit.Dollars,
                page.Compute(Operation.Product, "overtime-premium", "Premium of a week", Unit.Dollars, extra, overtime), week);
        }

        private Fact Driving(Fact work, Fact hands)
        {
            var trip = settings.Drive?.HoursATrip is { } own
                ? page.Given("$.bid.drive.hours_a_trip", "Hours of driving of a trip", own, Unit.Hours)
                : BidDefaults.DriveHoursATrip.Read(page, Unit.Hours);
            var trips = settings.Drive?.Trips is { } stated
                ? page.Given("$.bid.drive.trips", "Trips to the site", stated, Unit.Each)
                : page.Compute(
                    Operation.RoundUp, "drive-trips", "Trips, one each day begun", Unit.Each,
                    page.Compute(Operation.Quotient, "crew-days", "Days of the crew", Unit.Each, page.Compute(Operation.Quotient, "crew-days", "Hours of each hand", Unit.Hours, work, hands), HoursADay(settings, page)),
                    page.Constant("Whole days", 1, Unit.Each));
            return page.Compute(Operation.Product, "drive-hours", "Hours of driving", Unit.Hours, trip, trips, hands);
        }

        private Fact Share(Percent? own, string field, RuleRow row) =>
            own is { } percent ? page.Given($"$.bid.{field}", row.Label, percent.ToHundredths(), Unit.Percent) : row.Read(page, Unit.Percent);

        private Fact Dollars(Money? own, string field, RuleRow row) =>
            own is { } money ? page.Given($"$.bid.{field}", row.Label, money.ToDollars(), Unit.Dollars) : row.Read(page, Unit.Dollars);
    }
}
