using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Labor;

/// <summary>The job on the calendar: the crew's days, and the days on which it waits for an inspection or the utility. Waiting is no hours.</summary>
/// <remarks>
/// Work up to an inspection takes whole days of the crew. Working days are those from Monday on, as many as the bid table has; the utility counts every day.
/// Order of work and inspections: rough before walls are closed, the release of a service before the utility connects, final at the end. Source: a county's
/// inspection page for the inspections; the order is common practice, no source.
/// </remarks>
public sealed record JobCalendar
{
    /// <summary>The stretches, in order.</summary>
    public required ImmutableArray<CalendarStep> Steps { get; init; }

    /// <summary>Hours that are paid for: work, and lost time or driving.</summary>
    public required Fact PaidHours { get; init; }

    /// <summary>Days of the crew at work, parts of days in them.</summary>
    public required Fact CrewDays { get; init; }

    /// <summary>Days on the calendar from the first to the last, days off in them.</summary>
    public required Fact Days { get; init; }

    /// <summary>The last day; null without a start.</summary>
    public DateOnly? End => Steps.Select(s => s.To).LastOrDefault(d => d is not null);

    /// <summary>The calendar of a job.</summary>
    /// <param name="page">The page that it is worked out on.</param>
    /// <param name="bid">The bid settings: start, waits.</param>
    /// <param name="labor">Hours by phase, days of the utility.</param>
    /// <param name="crew">Who does the work.</param>
    public static JobCalendar Of(PageWriter page, BidSettings bid, LaborPlan labor, CrewRate crew) => new Making(page, bid, labor, crew).Make();

    private sealed class Making(PageWriter page, BidSettings bid, LaborPlan labor, CrewRate crew)
    {
        private static readonly ImmutableArray<WorkPhase> Rough = [WorkPhase.Layout, WorkPhase.RoughIn];
        private static readonly ImmutableArray<WorkPhase> Service = [WorkPhase.Panel];
        private static readonly ImmutableArray<WorkPhase> Trim = [WorkPhase.TrimOut, WorkPhase.TestAndInspection];

        private readonly List<CalendarStep> _steps = [];
        private readonly List<Fact> _work = [];
        private readonly int _week = (int)BidDefaults.WorkingDaysAWeek.Number();
        private readonly Fact _paid = crew.PaidHours(labor.Total, page);
        private readonly Fact _day = CrewRate.HoursADay(bid, page);
        private DateOnly? _next = bid.StartOn;

        internal JobCalendar Make()
        {
            Work("Layout and rough-in", Rough);
            Inspection("Rough inspection");
            if (labor.WaitDays is { } wait)
            {
                Work("Service and panel", Service);
                Inspection("Release of the service");
                Utility(wait);
                Work("Trim-out and tests", Trim);
            }
            else
            {
                Work("Panel, trim-out and tests", [.. Service, .. Trim]);
            }

            Inspection("Final inspection");
            return new JobCalendar { Steps = [.. _steps], PaidHours = _paid, CrewDays = page.Sum("crew-days", "Days of the crew", Unit.Each, _work), Days = OnTheCalendar() };
        }

        private void Work(string label, ImmutableArray<WorkPhase> phases)
        {
            var hours = page.Sum("calendar-hours", $"Hours of {label}", Unit.Hours, [.. phases.Where(labor.ByPhase.ContainsKey).Select(p => labor.ByPhase[p])]);
            if (hours.Value == 0)
            {
                return;
            }

            // Lost time and driving fall on every stretch alike.
            var share = page.Compute(Operation.Quotient, "calendar-hours", "Share of the hours of the job", Unit.Factor, hours, labor.Total);
            var paid = page.Compute(Operation.Product, "calendar-hours", $"Paid hours of {label}", Unit.Hours, _paid, share);
            var hand = page.Compute(Operation.Quotient, "crew-days", "Paid hours of each hand", Unit.Hours, paid, crew.Hands);
            var days = page.Compute(Operation.Quotient, "crew-days", $"Days of {label}", Unit.Each, hand, _day);
            _work.Add(days);
            Add(CalendarStepKind.Work, label, page.Compute(Operation.RoundUp, "started-days", "Days begun", Unit.Each, days, page.Constant("Whole days", 1, Unit.Each)));
        }

        private void Inspection(string label) => Add(CalendarStepKind.Inspection, label, bid.InspectionWaitDays is { } own
            ? page.Given("$.bid.inspection_wait_days", "Working days that the crew waits for an inspection", own, Unit.Each)
            : BidDefaults.InspectionWaitDays.Read(page, Unit.Each));

        private void Add(CalendarStepKind kind, string label, Fact days)
        {
            var from = _next is { } next && days.Value > 0 ? OnWork(next) : (DateOnly?)null;
            var to = from;
            for (var day = 1; to is { } last && day < days.Value; day++)
            {
                to = OnWork(last.AddDays(1));
            }

            _steps.Add(new CalendarStep(kind, label, days, from, to));
            _next = to?.AddDays(1) ?? _next;
        }

        private void Utility(Fact wait)
        {
            var from = wait.Value > 0 ? _next : null;
            var to = from?.AddDays((int)wait.Value - 1);
            _steps.Add(new CalendarStep(CalendarStepKind.Utility, "Waiting for the utility", wait, from, to));
            _next = to?.AddDays(1) ?? _next;
        }

        private DateOnly OnWork(DateOnly day)
        {
            while (((int)day.DayOfWeek + 6) % 7 >= _week)
            {
                day = day.AddDays(1);
            }

            return day;
        }

        // Without a start nobody knows where the days off fall; the share of a week says how many there are.
        private Fact OnTheCalendar()
        {
            if (_steps.FirstOrDefault(s => s.From is not null)?.From is { } first && _steps.Last(s => s.To is not null).To is { } last)
            {
                return page.Constant("Days from the first to the last on the calendar", last.DayNumber - first.DayNumber + 1, Unit.Each);
            }

            var working = page.Sum("calendar-days", "Working days", Unit.Each, [.. _steps.Where(s => s.Kind is not CalendarStepKind.Utility).Select(s => s.Days)]);
            var weeks = page.Compute(Operation.Quotient, "calendar-days", "Weeks", Unit.Factor, working, BidDefaults.WorkingDaysAWeek.Read(page, Unit.Each));
            var days = page.Compute(Operation.Product, "calendar-days", "Days on the calendar", Unit.Each, weeks, page.Constant("Days of a week", 7, Unit.Each));
            return page.Compute(
                Operation.RoundUp, "calendar-days", "Days on the calendar, begun ones counted", Unit.Each,
                page.Sum("calendar-days", "Days on the calendar with the utility's", Unit.Each, [days, .. _steps.Where(s => s.Kind is CalendarStepKind.Utility).Select(s => s.Days)]),
                page.Constant("Whole days", 1, Unit.Each));
        }
    }
}
