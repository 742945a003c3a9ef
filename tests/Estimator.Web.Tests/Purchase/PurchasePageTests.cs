using Bunit;
using Estimator.Engine.Measures;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;
using Estimator.Web.Purchase;

namespace Estimator.Web.Tests.Purchase;

public sealed class PurchasePageTests : WebContext
{
    [Fact]
    public async Task Render_Sample_PrintsTheEnginesCostsAndTotal()
    {
        var priced = await OpenSampleAsync();

        var page = Page(priced);

        var printed = page.FindAll(".order tbody tr").Select(r => (r.Children[0].TextContent, r.Children[^1].QuerySelector(".n")?.TextContent));
        Assert.Equal(priced.Estimate.Purchase.Lines.Select(l => (l.Description, l.Cost is { } cost ? American.Dollars(cost.Value.ToDollars()) : null)), printed);
        Assert.Equal(American.Dollars(priced.Estimate.Purchase.Total.Value), page.Find(".order tfoot .n").TextContent);
        Assert.Equal(priced.Estimate.Purchase.Total.Value, priced.Estimate.Purchase.Lines.Sum(l => l.Cost?.Value.ToDollars() ?? 0));
    }

    // Stated in the job, bought beyond the takeoff, said at the line, and taken back with the statement.
    [Fact]
    public async Task Render_SpareOfTheJob_IsSaidAtItsLine()
    {
        Assert.Empty(Page(await OpenSampleAsync()).FindAll(".spare"));
        await Desk.EditAsync("Devices, 12 % spare", j => j with { Practice = j.Practice with { SparePercents = j.Practice.SparePercents.SetItem("device", Percent.FromHundredths(12)) } }, Token);
        var priced = await PricedAsync();

        var said = Page(priced).FindAll(".order tbody tr").Where(r => r.QuerySelector(".spare") is not null).Select(r => (r.Children[0].FirstChild!.TextContent, r.QuerySelector(".spare .n")!.TextContent));

        var spare = priced.Estimate.Takeoff.Lines.Where(l => l.Spare is not null).Select(l => (l.Description, American.Number(l.Spare!.Value.Value))).ToList();
        Assert.NotEmpty(spare);
        Assert.Equal(spare, said);
    }

    [Fact]
    public async Task Render_SamplePrices_AreMarkedAtEachLineAndSaidAbove()
    {
        var page = Page(await OpenSampleAsync());

        Assert.Contains("samples are invented", page.Find(".caution").TextContent, StringComparison.Ordinal);
        Assert.All(page.FindAll(".order tbody tr").Where(r => r.Children[^1].QuerySelector(".n") is not null), r => Assert.Contains("sample", r.Children[^1].TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Surplus_EachLine_IsWhatTheEngineFound()
    {
        var priced = await OpenSampleAsync("two-storey-house");

        Assert.All(priced.Estimate.Purchase.Lines.Where(l => !l.Packs.IsEmpty), l =>
        {
            var left = Surplus.Of(priced, l)!.Left;
            Assert.Equal(l.Left, left.Unit is Engine.Explanations.Unit.Length ? left.AsLength().Value.ToFeet() : left.Value, 9);
        });
    }

    [Fact]
    public async Task CutPlan_EachCoil_HoldsTheEnginesPiecesAndLeavesTheRest()
    {
        var priced = await OpenSampleAsync("two-storey-house");

        foreach (var cable in CableCut.Of(priced))
        {
            Assert.Equal(cable.Plan.Coils.SelectMany(c => c.Pieces).Select(p => p.Length), cable.Coils.SelectMany(c => c.Pieces).Select(p => p.Length.AsLength().Value));
            Assert.Equal(cable.Plan.Coils.Select(c => c.Left), cable.Coils.Select(c => c.Left.AsLength().Value));
        }
    }

    [Fact]
    public async Task CutTable_Opened_PrintsEachPieceInTheOrderOfCutting()
    {
        var cable = CableCut.Of(await OpenSampleAsync())[0];
        var table = Render<CoilTable>(p => p.Add(t => t.Cut, cable).AddCascadingValue(cable.Source));
        Assert.Empty(table.FindAll("table"));

        table.Find("button").Click();

        Assert.Equal(cable.Plan.Coils.SelectMany(c => c.Pieces).Select(p => p.Length.ToString()), table.FindAll("td:nth-child(2) .n").Select(n => n.TextContent));
    }

    // Widths are the only thing that is to scale: a piece of half a coil takes half of its bar.
    [Fact]
    public async Task Drawing_EachPiece_IsToTheScaleOfItsCoil()
    {
        var cable = CableCut.Of(await OpenSampleAsync())[0];

        var bars = Render<CoilDrawing>(p => p.Add(d => d.Cut, cable)).FindAll(".coil .bar");

        Assert.Equal(cable.Coils.Length, bars.Count);
        foreach (var (bar, coil) in bars.Zip(cable.Coils))
        {
            var widths = bar.QuerySelectorAll(".piece").Select(p => decimal.Parse(p.GetAttribute("style")!["width:".Length..].TrimEnd('%'), American.Culture)).ToList();
            Assert.Equal(coil.Pieces.Length, widths.Count);
            var feet = coil.Pieces.Sum(p => p.Length.AsLength().Value.ToFeet());
            Assert.InRange(widths.Sum() - (100 * feet / coil.Coil.Length.ToFeet()), -0.1m, 0.1m);
        }
    }

    private IRenderedComponent<PurchasePage> Page(PricedJob priced) => Render<PurchasePage>(p => p.Add(b => b.JobId, Desk.Job.Id).AddCascadingValue(priced.Source));
}
