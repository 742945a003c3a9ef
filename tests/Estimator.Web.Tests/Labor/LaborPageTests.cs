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

        Assert.Equal(priced.Estimate.Labor.Total.Value / 8, time.Calendar.CrewDays.Value, 6);
        Assert.Equal(priced.Estimate.Labor.Total.Value * 2, time.Calendar.PaidHours.Value, 6);
        Assert.Equal(decimal.Ceiling(time.Calendar.Steps.Sum(s => s.Days.Value) * 7 / 5), time.Calendar.Days.Value);
    }

    [Fact]
    public async Task Driving_AsHours_AsksForThemAndTakesNoShare()
    {
        var priced = await OpenSampleAsync();
        var page = Render<LaborPage>(p => p.Add(l => l.JobId, Desk.Job.Id).AddCascadingValue(priced.Source));
        Assert.DoesNotContain("Trips to the site", page.Markup, StringComparison.Ordinal);

        await page.Find("section[aria-labelledby=hands] select").ChangeAsync(new() { Value = "Hours" });

        page.WaitForAssertion(() => Assert.Contains("Trips to the site", page.Markup, StringComparison.Ordinal));
        Assert.True((await PricedAsync()).Estimate.Bid.Crew.DriveHours is { Value: > 0 });
    }

    [Fact]
    public async Task Calendar_WithAStart_NamesItsDays()
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Start", j => j with { Bid = j.Bid with { StartOn = new DateOnly(2026, 3, 2) } }, Token);
        var priced = await PricedAsync();

        var panel = Render<CrewPanel>(p => p.Add(c => c.Priced, priced).AddCascadingValue(priced.Source));

        Assert.Contains("Mar 2, 2026", panel.Find(".calendar li").TextContent, StringComparison.Ordinal);
        Assert.Equal(CrewTime.Of(priced).Calendar.Steps.Length, panel.FindAll(".calendar li").Count);
    }

    [Theory]
    [InlineData("The job takes less than a day")]
    [InlineData("Material is carried up to a second storey")]
    public async Task Statement_Ticked_LengthensTheHoursAndNamesItsFactor(string label)
    {
        var before = await OpenSampleAsync();
        var list = Render<FactorList>(p => p.Add(f => f.Priced, before).AddCascadingValue(before.Source));

        await list.FindAll("label").Single(l => l.TextContent.Contains(label, StringComparison.Ordinal)).QuerySelector("input")!.ChangeAsync(new() { Value = true });

        var after = await PricedAsync();
        Assert.True(after.Estimate.Labor.Total.Value > before.Estimate.Labor.Total.Value);
        Assert.NotEmpty(after.Estimate.Labor.Lines.SelectMany(l => l.Factors));
    }
}
