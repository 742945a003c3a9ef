using Estimator.Cli;
using Estimator.Engine;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Wiring;
using Estimator.TestKit;
using Microsoft.Playwright;

namespace Estimator.Browser.Tests;

/// <summary>The plan by keyboard, pointer and finger: what it shows of a run is what the engine measured.</summary>
public sealed class PlanPictureTests(RunningPages pages)
{
    [Fact]
    public async Task Arrows_AlongACircuit_ShowTheEnginesRuns()
    {
        await using var visit = await OpenAsync(Screen.Desk);
        await visit.Page.Locator("[data-circuit='2']").ClickAsync();
        await visit.Page.Locator("[data-run='2.1']").FocusAsync();
        await visit.Page.Keyboard.PressAsync("ArrowRight");

        var estimate = JobEstimate.Compute(JobFile.Read(Samples.Read("basement-finish"), "basement-finish").Job, Catalogues.Shipped, SearchDepth.Quick);
        var run = estimate.Wiring.Runs[estimate.Wiring.Circuits[1].Runs[1]];
        await Assertions.Expect(visit.Page.Locator(".card h3")).ToContainTextAsync("Run 2.2");
        await Assertions.Expect(visit.Page.Locator(".card .sum [data-n]")).ToHaveTextAsync(run.Total.AsLength().Value.ToString());
        Assert.Empty(visit.Faults);
    }

    [Fact]
    public async Task Keys_PlusZeroArrow_ZoomFitAndMove()
    {
        await using var visit = await OpenAsync(Screen.Desk);
        var fitted = await WidthAsync(visit);
        await visit.Page.Locator("[data-plan-scroll]").FocusAsync();
        await visit.Page.Keyboard.PressAsync("+");
        await visit.Page.Keyboard.PressAsync("+");
        Assert.True(await WidthAsync(visit) > fitted * 1.5);
        var before = await visit.Page.Locator("[data-plan-scroll]").EvaluateAsync<double>("e => e.scrollTop");
        await visit.Page.Keyboard.PressAsync("ArrowDown");
        await visit.Page.WaitForFunctionAsync("y => document.querySelector('[data-plan-scroll]').scrollTop > y", before);
        await visit.Page.Keyboard.PressAsync("0");
        Assert.Equal(fitted, await WidthAsync(visit), 1.0);
    }

    [Fact]
    public async Task Plan_OnAPhone_ScrollsSidewaysInsideThePage()
    {
        await using var visit = await OpenAsync(Screen.Phone);
        Assert.True(await WidthAsync(visit) > 700);
        Assert.True(await visit.Page.EvaluateAsync<bool>("() => { const e = document.querySelector('[data-plan-scroll]'); return e.scrollWidth > e.clientWidth && document.documentElement.scrollWidth <= innerWidth; }"));
    }

    private async Task<Visit> OpenAsync(Screen screen)
    {
        var visit = await pages.OpenAsync(screen);
        var id = await visit.StartSampleAsync("Basement finish");
        await visit.GoAsync($"/jobs/{Uri.EscapeDataString(id)}/plan");
        await visit.Page.WaitForFunctionAsync("() => document.querySelector('[data-plan-stage]')?.style.width");
        return visit;
    }

    private static Task<double> WidthAsync(Visit visit) => visit.Page.Locator("[data-plan-stage]").EvaluateAsync<double>("e => e.getBoundingClientRect().width");
}
