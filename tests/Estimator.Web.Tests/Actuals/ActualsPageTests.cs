using Bunit;
using Estimator.Data.Actuals;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Learning;
using Estimator.Web.Actuals;
using Estimator.Web.Catalogues;
using Estimator.Web.Figures;
using Estimator.Web.Learned;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Web.Tests.Actuals;

public sealed class ActualsPageTests : WebContext
{
    private ActualsStore Store => Services.GetRequiredService<ActualsStore>();

    [Fact]
    public async Task WriteDown_HoursAndMaterial_StandBesideTheEstimate()
    {
        var priced = await OpenSampleAsync();
        var page = Page(priced);

        await WriteAsync(page, "RoughIn", "24.5", "lead and helper");
        await page.Find("[aria-label='Used of NM-B cable 12/2 with ground']").ChangeAsync(new() { Value = "400" });

        page.WaitForAssertion(() => Assert.Contains("lead and helper", page.Find("[aria-label='Hours worked'] tbody tr").TextContent, StringComparison.Ordinal));
        var stored = await Store.LoadAsync(Desk.Job.Id, Token);
        Assert.Equal((WorkPhase.RoughIn, 24.5m), (stored.Hours.Single().Phase, stored.Hours.Single().Hours));
        Assert.Equal([new UsedMaterial("nm_b-12-2", 400)], stored.Material);
        var figures = ActualFigures.Of(priced, stored);
        Assert.Equal(24.5m - priced.Estimate.Labor.ByPhase[WorkPhase.RoughIn].Value, figures.Phases.Single(p => p.Phase is WorkPhase.RoughIn).Over!.Value.Value);
        Assert.Equal((double)(24.5m * priced.Estimate.Bid.HourCost.Value), (double)figures.Result!.Labor.Value, 0.006);
    }

    [Theory]
    [InlineData("", "above 0")]
    [InlineData("0", "above 0")]
    [InlineData("=9", "above 0")]
    [InlineData("1001", "up to 1,000")]
    public async Task WriteDown_WhatIsNoHours_SaysWhatIsAccepted(string hours, string accepted)
    {
        var page = Page(await OpenSampleAsync());
        await WriteAsync(page, "Panel", hours, "");
        page.WaitForAssertion(() => Assert.Contains(accepted, page.Find(".problem").TextContent, StringComparison.Ordinal));
        Assert.Empty((await Store.LoadAsync(Desk.Job.Id, Token)).Hours);
    }

    [Fact]
    public async Task Close_ThenReopen_EndsAndBeginsWriting()
    {
        var page = Page(await OpenSampleAsync());
        Assert.True(page.Find(".closing button.act").HasAttribute("disabled"));
        await WriteAsync(page, "TrimOut", "8", "");

        await page.Find(".closing button.act").ClickAsync(new());

        page.WaitForAssertion(() => Assert.Contains("Closed on", page.Find(".closing").TextContent, StringComparison.Ordinal), TimeSpan.FromSeconds(20));
        Assert.Empty(page.FindAll(".put, input.cell"));
        var outcome = Assert.Single(Assert.Single(await Store.ClosedAsync(Token)).Outcomes);
        Assert.Equal((LearnedKind.Hours, "trim_out", 8m), (outcome.Kind, outcome.Key, outcome.Actual));
        await page.Find(".closing button.act").ClickAsync(new());
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll(".put")));
    }

    // Two jobs took half as long again at rough-in: proposed, not applied; accepted, later estimates follow; withdrawn, the table counts again.
    [Fact]
    public async Task Learned_Accept_ChangesTheNextEstimate_WithdrawTakesItBack()
    {
        var shelf = Services.GetRequiredService<LocalPriceShelf>();
        await shelf.StartAsync(Token);
        await CloseTwoAsync();
        var before = Services.GetRequiredService<CatalogueShelf>().Current.Parts;
        var page = Render<LearnedPage>();
        page.WaitForAssertion(() => Assert.Single(page.FindAll("[aria-label='Proposals'] tbody tr")));
        Assert.Equal(before.Hash, Services.GetRequiredService<CatalogueShelf>().Current.Parts.Hash);

        await page.Find("[aria-label='Accept: Hours of rough-in']").ClickAsync(new());

        page.WaitForAssertion(() => Assert.Contains("counts", page.Find("[aria-label='Decided'] tbody tr").TextContent, StringComparison.Ordinal));
        Assert.Empty(page.FindAll("[aria-label='Proposals'] tbody tr"));
        var after = Services.GetRequiredService<CatalogueShelf>().Current;
        Assert.True(Rough(after.Parts) > Rough(before));
        Assert.Equal(after.Parts.LaborUnits, PartsCatalogue.Read(after.Files).Value.LaborUnits);

        await page.Find("[aria-label='Withdraw: Hours of rough-in']").ClickAsync(new());

        page.WaitForAssertion(() => Assert.Contains("counts no more", page.Find("[aria-label='Decided'] tbody tr").TextContent, StringComparison.Ordinal));
        Assert.Equal(Rough(before), Rough(Services.GetRequiredService<CatalogueShelf>().Current.Parts));
    }

    // Jobs of different mixes: each class has its factor, its units stand beside the table's before anybody accepts them, and one act accepts all classes of the phase.
    [Fact]
    public async Task Learned_ByClass_ShowsUnitsBeforeAcceptance_AndActsInFrontOfThePhase()
    {
        await Services.GetRequiredService<LocalPriceShelf>().StartAsync(Token);
        foreach (var (cable, device) in new[] { (18m, 2m), (3m, 17m), (10m, 10m), (5m, 15m), (16m, 4m) })
        {
            await CloseAsync(new JobOutcome(LearnedKind.Hours, "rough_in", 20, cable + (1.4m * device)) { Classes = [new ClassHours("cable", cable), new ClassHours("device", device)] });
        }

        var before = Services.GetRequiredService<CatalogueShelf>().Current.Parts;
        var page = Render<LearnedPage>();
        page.WaitForElement("[aria-label='Units of Hours of rough-in: devices, boxes, plates and alarms']");
        await page.Find("[aria-label='Units of Hours of rough-in: devices, boxes, plates and alarms']").ClickAsync(new());
        var device15 = page.FindAll(".units tbody tr").Single(r => r.TextContent.StartsWith("Duplex receptacle, 15 A 125 V, tamper resistant", StringComparison.Ordinal));
        Assert.Contains(American.Number(Rough(before), 3), device15.TextContent, StringComparison.Ordinal);
        Assert.Equal(before.Hash, Services.GetRequiredService<CatalogueShelf>().Current.Parts.Hash);

        await page.FindAll("button.act").Single(b => b.TextContent.Contains("Accept these 2 classes", StringComparison.Ordinal)).ClickAsync(new());

        page.WaitForAssertion(() => Assert.Equal(2, page.FindAll("[aria-label='Decided'] tbody tr").Count));
        Assert.Empty(page.FindAll("[aria-label='Proposals'] tbody tr"));
        var after = Services.GetRequiredService<CatalogueShelf>().Current.Parts;
        Assert.InRange(Rough(after) / Rough(before), 1.12m, 1.4m);
        Assert.InRange(Pull(after) / Pull(before), 0.95m, 1.1m);

        static decimal Pull(PartsCatalogue catalogue) => catalogue.LaborFor("nm_b-12-2").Single(u => u.Phase is WorkPhase.RoughIn).Hours;
    }

    // All jobs of one mix: said in a sentence, with the intervals as wide as they are.
    [Fact]
    public async Task Learned_OfJobsOfOneMix_SaysThatClassesAreNotToldApart()
    {
        await Services.GetRequiredService<LocalPriceShelf>().StartAsync(Token);
        await CloseAsync(new JobOutcome(LearnedKind.Hours, "rough_in", 20, 26) { Classes = [new ClassHours("cable", 8), new ClassHours("device", 12)] });
        await CloseAsync(new JobOutcome(LearnedKind.Hours, "rough_in", 30, 38) { Classes = [new ClassHours("cable", 12), new ClassHours("device", 18)] });
        var page = Render<LearnedPage>();
        page.WaitForAssertion(() => Assert.Contains("nearly the same mix", page.Find(".classes p.note").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Learned_SetAside_IsShownNoMoreAndCountsNowhere()
    {
        await Services.GetRequiredService<LocalPriceShelf>().StartAsync(Token);
        await CloseTwoAsync();
        var page = Render<LearnedPage>();
        page.WaitForElement("[aria-label='Set aside: Hours of rough-in']");
        await page.Find("[aria-label='Set aside: Hours of rough-in']").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Contains("set aside", page.Find("[aria-label='Decided'] tbody tr").TextContent, StringComparison.Ordinal));
        Assert.Empty(page.FindAll("[aria-label='Proposals'] tbody tr"));
        Assert.Empty(Services.GetRequiredService<LocalPriceShelf>().Units);
    }

    // A catalogue put back as it was has the hash of an estimate that is kept with another instance of it.
    [Fact]
    public async Task Reprice_UnderACatalogueAsItWasBefore_Ends()
    {
        await OpenSampleAsync();
        Services.GetRequiredService<CatalogueShelf>().Put(CatalogueShelf.BuiltIn());
        await Task.Run(Desk.Reprice, Token).WaitAsync(TimeSpan.FromSeconds(20), Token);
        await PricedAsync();
        Assert.False(Desk.Working);
    }

    private static decimal Rough(PartsCatalogue catalogue) => catalogue.LaborFor("receptacle-15").Single(u => u.Phase is WorkPhase.RoughIn).Hours;

    private static async Task WriteAsync(IRenderedComponent<ActualsPage> page, string phase, string hours, string who)
    {
        page.WaitForElement(".put select");
        await page.Find(".put select").ChangeAsync(new() { Value = phase });
        await page.Find(".put .hours input").ChangeAsync(new() { Value = hours });
        await page.Find(".put .who input").ChangeAsync(new() { Value = who });
        await page.Find(".put button.act").ClickAsync(new());
    }

    private async Task CloseTwoAsync()
    {
        foreach (var _ in new[] { 1, 2 })
        {
            await CloseAsync(new JobOutcome(LearnedKind.Hours, "rough_in", 20, 30));
        }
    }

    private async Task CloseAsync(JobOutcome outcome)
    {
        await OpenSampleAsync();
        await Store.CloseAsync(Desk.Job.Id, new DateOnly(2026, 3, 2), [outcome], "You", Token);
    }

    private IRenderedComponent<ActualsPage> Page(Web.Jobs.PricedJob priced) => Render<ActualsPage>(p => p.Add(a => a.JobId, Desk.Job.Id).AddCascadingValue(priced.Source));
}
