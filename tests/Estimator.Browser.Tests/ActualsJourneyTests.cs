using System.Globalization;
using Estimator.Engine.Learning;
using Microsoft.Playwright;

namespace Estimator.Browser.Tests;

/// <summary>A contractor closes jobs with what they took, accepts what they say, and the next estimate has other hours. On a server of its own, whose hours are no other test's.</summary>
public sealed class ActualsJourneyTests(RunningPages pages)
{
    private const string RoughIn = "Rough-in";

    // Each job takes half as many hours again at rough-in as was estimated; what is proposed is worked out again here.
    [Theory]
    [InlineData(Screen.Desk)]
    [InlineData(Screen.Phone)]
    public async Task Contractor_ClosingJobs_LearnsForTheNextEstimate(Screen screen)
    {
        using var folder = new PassingFolder();
        await using var server = await RunningServer.StartAsync(folder.Path);
        await using var visit = await pages.OpenAsync(server, screen);
        var page = visit.Page;
        List<JobRatio> ratios = [];
        foreach (var sample in new[] { "Basement finish", "Two-storey house", "Basement finish" })
        {
            var job = await visit.StartSampleAsync(sample);
            await visit.GoAsync($"/jobs/{job}/actuals");
            var estimated = await FigureAsync(page, $"{RoughIn}, estimated hours");
            var worked = decimal.Round(estimated * 1.5m, 1, MidpointRounding.AwayFromZero);
            await WriteAsync(page, RoughIn, worked);
            await WriteAsync(page, "Trim-out", 9);
            await Assertions.Expect(page.GetByText("Left", new() { Exact = true })).ToBeVisibleAsync();
            await page.GetByLabel("Used of NM-B cable 12/2 with ground").FillAsync("600");
            await page.GetByLabel("Used of NM-B cable 12/2 with ground").BlurAsync();
            await Assertions.Expect(page.GetByRole(AriaRole.Table, new() { Name = "Material used" }).Locator("tbody button[data-n]").Nth(1)).ToBeVisibleAsync();
            Assert.Empty(await visit.AccessibilityProblemsAsync());
            await page.GetByRole(AriaRole.Button, new() { Name = "Close the job" }).ClickAsync();
            await Assertions.Expect(page.GetByRole(AriaRole.Status).Filter(new() { HasText = "Closed on" })).ToBeVisibleAsync();
            ratios.Add(new JobRatio(job, estimated, worked));
        }

        Assert.Empty(await visit.AccessibilityProblemsAsync());
        var next = await visit.StartSampleAsync("Basement finish");
        await visit.GoAsync($"/jobs/{next}/labor");
        var before = await FigureAsync(page, $"{RoughIn}, hours");

        await visit.GoAsync("/learned");
        var proposal = page.GetByRole(AriaRole.Table, new() { Name = "Proposals" }).Locator("tbody tr", new() { HasText = "Hours of rough-in" });
        var factor = Pooling.Hours(ratios).Factor;
        await Assertions.Expect(proposal).ToContainTextAsync("times the table");
        Assert.Equal((double)factor, (double)decimal.Parse((await proposal.Locator("b").InnerTextAsync()).Split(' ')[0], CultureInfo.InvariantCulture), 0.02);
        Assert.Empty(await visit.AccessibilityProblemsAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Units of Hours of rough-in: cable" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Region, new() { Name = "Units of Hours of rough-in: cable" })).ToContainTextAsync("NM-B cable 12/2 with ground");
        Assert.Empty(await visit.AccessibilityProblemsAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Accept: Hours of rough-in", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Withdraw: Hours of rough-in", Exact = true })).ToBeVisibleAsync();
        Assert.Empty(await visit.AccessibilityProblemsAsync());

        await visit.GoAsync($"/jobs/{next}/labor");
        await visit.PriceAsync();
        Assert.Equal((double)(before * factor), (double)await FigureAsync(page, $"{RoughIn}, hours"), 0.3);
        await page.GetByText("times the table from 3 closed jobs").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });

        await visit.GoAsync("/learned");
        await page.GetByRole(AriaRole.Button, new() { Name = "Withdraw: Hours of rough-in", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByText("counts no more")).ToBeVisibleAsync();
        await visit.GoAsync($"/jobs/{next}/labor");
        await visit.PriceAsync();
        Assert.Equal(before, await FigureAsync(page, $"{RoughIn}, hours"));
        Assert.Empty(visit.Faults);
    }

    private static async Task WriteAsync(IPage page, string phase, decimal hours)
    {
        var rows = page.GetByRole(AriaRole.Table, new() { Name = "Hours worked" }).Locator("tbody tr");
        var had = await rows.CountAsync();
        await page.GetByRole(AriaRole.Combobox, new() { Name = "Phase" }).First.SelectOptionAsync(new SelectOptionValue { Label = phase });
        await page.GetByLabel("Hours of all hands").FillAsync(hours.ToString(CultureInfo.InvariantCulture));
        await page.GetByLabel("Who worked").FillAsync("lead and helper");
        await page.GetByRole(AriaRole.Button, new() { Name = "Write down" }).ClickAsync();
        await Assertions.Expect(rows).ToHaveCountAsync(had + 1);
    }

    private static async Task<decimal> FigureAsync(IPage page, string label)
    {
        var figure = page.Locator($"main button[data-n][aria-label^='{label}']").First;
        await figure.WaitForAsync();
        return decimal.Parse((await figure.InnerTextAsync()).Trim(), NumberStyles.Number, CultureInfo.InvariantCulture);
    }
}
