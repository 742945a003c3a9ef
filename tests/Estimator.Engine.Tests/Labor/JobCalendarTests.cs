using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Labor;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Tests.Labor;

public sealed class JobCalendarTests
{
    // Two hands of 8 hours work 16 hours a day: rough-in of 40 hours takes three days begun, the rest of 20 hours two.
    // From Thursday 5 March 2026: work Thu, Fri, Mon; rough inspection Tue; work Wed, Thu; final Fri 13 March. Nine days, first and last counted.
    [Fact]
    public void Steps_FromAThursday_SkipTheDaysOff()
    {
        var calendar = Calendar(new BidSettings { StartOn = new DateOnly(2026, 3, 5) }, null);
        Assert.Equal(
            [("Layout and rough-in", Day(5), Day(9)), ("Rough inspection", Day(10), Day(10)), ("Panel, trim-out and tests", Day(11), Day(12)), ("Final inspection", Day(13), Day(13))],
            calendar.Steps.Select(s => (s.Label, s.From!.Value, s.To!.Value)));
        Assert.Equal((9m, Day(13)), (calendar.Days.Value, calendar.End!.Value));
        Assert.Equal(60m / 16m, calendar.CrewDays.Value);
    }

    // Service of 10 hours: one day; its release one day; the utility's ten days count Saturdays and Sundays.
    // Thu 5, Fri 6, Mon 9 rough; Tue 10 inspection; Wed 11 panel; Thu 12 release; 13 to 22 the utility; Mon 23 trim-out; Tue 24 final.
    [Fact]
    public void Steps_WithWorkOnTheService_WaitForReleaseAndUtility()
    {
        var calendar = Calendar(new BidSettings { StartOn = new DateOnly(2026, 3, 5) }, 10);
        Assert.Equal((Day(13), Day(22)), calendar.Steps.Where(s => s.Kind is CalendarStepKind.Utility).Select(s => (s.From!.Value, s.To!.Value)).Single());
        Assert.Equal(Day(24), calendar.End);
    }

    // Seven working days without a start: 7 / 5 of them on the calendar, begun ones counted.
    [Fact]
    public void Days_WithoutAStart_TakeTheShareOfAWeek()
    {
        var calendar = Calendar(new BidSettings(), null);
        Assert.All(calendar.Steps, s => Assert.Null(s.From));
        Assert.Equal(10m, calendar.Days.Value);
    }

    [Fact]
    public void Waiting_IsNoHours()
    {
        var (none, long_) = (Calendar(new BidSettings { InspectionWaitDays = 0 }, null), Calendar(new BidSettings { InspectionWaitDays = 9 }, null));
        Assert.Equal(none.CrewDays.Value, long_.CrewDays.Value);
        Assert.Equal(7m, none.Days.Value);
        Assert.True(long_.Days.Value > none.Days.Value);
    }

    private static DateOnly Day(int day) => new(2026, 3, day);

    private static JobCalendar Calendar(BidSettings bid, int? utility)
    {
        var page = new PageWriter(0);
        Fact Hours(string path, decimal hours) => page.Given(path, path, hours, Unit.Hours);
        var phases = ImmutableSortedDictionary<WorkPhase, Fact>.Empty
            .Add(WorkPhase.RoughIn, Hours("r", 40)).Add(WorkPhase.Panel, Hours("p", 10)).Add(WorkPhase.TrimOut, Hours("t", 10));
        var labor = new LaborPlan
        {
            Lines = [],
            ByPhase = phases,
            Total = Hours("all", 60),
            WaitDays = utility is { } days ? page.Given("u", "u", days, Unit.Each) : null,
            Page = page.ToPage(),
        };
        return JobCalendar.Of(page, bid, labor, CrewRate.Of(bid with { ProductivePercent = Percent.FromHundredths(100) }, labor.Total, page));
    }
}
