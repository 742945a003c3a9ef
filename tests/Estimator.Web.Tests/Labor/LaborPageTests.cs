using Bunit;
using Estimator.Documents.Labor;
using Estimator.Engine.Measures;
using Estimator.Web.Figures;
using Estimator.Web.Labor;

namespace Estimator.Web.Tests.Labor;

public sealed class LaborPageTests : WebContext
{
    [Fact]
    public async Task Render_Sample_PrintsTheEnginesHoursByPhaseAndItem()
    {
        var priced = await OpenSampleAsync();
        var labor = priced.Estimate.Labor;

        var page = Render<LaborPage>(p => p.Add(l => l.JobId, Desk.Job.Id).AddCascadingValue(priced.Source));

        var phases = page.FindAll(".phases tbody tr").ToDictionary(r => r.QuerySelector("th")!.TextContent, r => r.QuerySelector(".n")!.TextContent);
        Assert.Equal(American.Fixed(labor.Total.Value, 1), phases["All hours"]);
        Assert.All(labor.ByPhase, p => Assert.Equal(American.Fixed(p.Value.Value, 1), phases[PhaseWords.Of(p.Key)]));
        Assert.Equal(labor.Lines.OrderBy(l => l.Phase).Select(l => American.Fixed(l.Hours.Value, 2)), page.FindAll(".phase tbody tr td:nth-child(3) .n").Select(n => n.TextContent));
    }

    [Fact]
    public async Task Occupied_Ticked_IsStoredAndLengthensTheHours()
    {
        var before = await OpenSampleAsync();
        var list = Render<FactorList>(p => p.Add(f => f.Priced, before).AddCascadingValue(before.Source));

        list.Find("input[type=checkbox]").Change(true);

        list.WaitForAssertion(() => Assert.True(Desk.Job.Practice.Occupied));
        Assert.True((await PricedAsync()).Estimate.Labor.Total.Value > before.Estimate.Labor.Total.Value);
    }

    // 40 paid hours in 5 days are 8 a day; with a half of them productive, two hands do 8 hours of work a day together.
    [Fact]
    public async Task CrewTime_HalfProductivePair_TakesADayForEightHours()
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Crew", j => j with { Bid = j.Bid with { ProductivePercent = Percent.FromHundredths(50), HelpersPerElectrician = 1 } }, Token);
        var priced = await PricedAsync();

        var time = CrewTime.Of(priced);

        Assert.Equal(priced.Estimate.Labor.Total.Value / 8, time.CrewDays.Value, 6);
        Assert.Equal(priced.Estimate.Labor.Total.Value * 2, time.PaidHours.Value, 6);
        Assert.Equal(decimal.Ceiling(decimal.Ceiling(time.CrewDays.Value) * 7 / 5), time.CalendarDays.Value);
    }
}
