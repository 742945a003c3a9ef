using Bunit;
using Estimator.Documents.House;
using Estimator.Engine.House;
using Estimator.Web.Explanations;
using Estimator.Web.Jobs;
using Estimator.Web.Plans;

namespace Estimator.Web.Tests.Plans;

public sealed class PlanViewTests : WebContext
{
    [Fact]
    public async Task Circuit_TakenInHand_StandsOutAndItsRunsAreStopsOfTheKeyboard()
    {
        var priced = await OpenSampleAsync();
        var view = Draw(priced);
        Assert.Empty(view.FindAll("[data-run]"));

        view.Find("[data-circuit='2']").Click();

        Assert.Equal("true", view.Find("[data-circuit='2']").GetAttribute("aria-pressed"));
        var runs = view.FindAll("[data-run]");
        Assert.Equal(priced.Estimate.Wiring.Circuits[1].Runs.Length, runs.Count);
        Assert.Equal("0", runs[0].GetAttribute("tabindex"));
        Assert.All(runs.Skip(1), r => Assert.Equal("-1", r.GetAttribute("tabindex")));
        Assert.Equal("2.1", runs[0].GetAttribute("data-run"));
    }

    [Fact]
    public async Task Run_Focused_CardHasThePartsOfItsLengthAndEachOpens()
    {
        var priced = await OpenSampleAsync();
        var view = Draw(priced);
        view.Find("[data-circuit='1']").Click();
        view.Find("[data-run='1.1']").Focus();

        var run = priced.Estimate.Wiring.Runs[priced.Estimate.Wiring.Circuits[0].Runs[0]];
        var card = view.Find(".card");
        Assert.Contains("Run 1.1, panel to", card.TextContent, StringComparison.Ordinal);
        Assert.Contains(RunWords.Cable(run.Cable), card.TextContent, StringComparison.Ordinal);
        Assert.Equal(6, card.QuerySelectorAll("[data-n]").Length);

        view.Find(".card .sum [data-n]").Click();
        var explanation = Render<Explanation>();
        Assert.Contains(run.Total.AsLength().Value.ToString(), explanation.Find(".what").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_Clicked_TakesItsCircuitInHand()
    {
        var view = Draw(await OpenSampleAsync());
        view.Find(".run.hue3").Click();
        Assert.Equal("true", view.Find("[data-circuit='3']").GetAttribute("aria-pressed"));
        Assert.Contains("Run 3.", view.Find(".card h3").TextContent, StringComparison.Ordinal);
        view.Find(".card > button").Click();
        Assert.Empty(view.FindAll(".card"));
    }

    [Fact]
    public async Task Level_Chosen_ItsRoomsAreDrawn()
    {
        var view = Draw(await OpenSampleAsync("two-storey-house"));
        Assert.Contains("Kitchen", view.Find("svg").TextContent, StringComparison.Ordinal);
        view.FindAll(".levels button").First(b => b.TextContent == "Second floor").Click();
        Assert.DoesNotContain("Kitchen", view.Find(".stage svg").TextContent, StringComparison.Ordinal);
        Assert.Contains("Bedroom", view.Find(".stage svg").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task CircuitCable_OpenedDown_IsTheSumOfItsRuns()
    {
        var priced = await OpenSampleAsync();
        var figures = PlanFigures.Of(priced);
        for (var i = 0; i < figures.CircuitCable.Length; i++)
        {
            var runs = priced.Estimate.Wiring.Circuits[i].Runs;
            Assert.Equal(runs.Sum(r => priced.Estimate.Wiring.Runs[r].Total.AsLength().Value.ToFeet()), figures.CircuitCable[i].Value, 6);
            Assert.Equal(runs.Length, figures.Source.Book[figures.Source.Book[figures.CircuitCable[i].Node].Inputs[0]].Inputs.Length);
        }
    }

    [Fact]
    public async Task Table_Opened_HasEveryDeviceAndRunOfTheLevel()
    {
        var priced = await OpenSampleAsync();
        var view = Draw(priced);
        view.Find(".facts button").Click();
        Assert.Equal(priced.Estimate.Layout.Devices.Length + priced.Estimate.Layout.Equipment.Length, view.FindAll("table[aria-label='Devices and outlets'] tbody tr").Count);
        Assert.Equal(priced.Estimate.Wiring.Runs.Length, view.FindAll("table[aria-label=Runs] tbody tr").Count);
    }

    [Fact]
    public async Task Legend_CountsOfSigns_AreThoseOfTheEstimate()
    {
        var priced = await OpenSampleAsync();
        var counts = Draw(priced).FindAll(".legend li").ToDictionary(l => l.QuerySelector("span")!.TextContent, l => l.QuerySelector("b")?.TextContent);
        Assert.Equal($"{priced.Estimate.Layout.Devices.Count(d => d.Kind is DeviceKind.DuplexReceptacle)}", counts["receptacle"]);
        Assert.Equal($"{priced.Estimate.Layout.Devices.Count(d => d.Kind is DeviceKind.RecessedLight)}", counts["recessed light"]);
    }

    [Fact]
    public async Task Room_NameWithMarkup_StaysText()
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Rename", j => RoomActs.With(j, "family", r => r with { Name = "<script>alert(1)</script>" }), Token);
        var view = Draw(await PricedAsync());
        Assert.Empty(view.FindAll("script"));
        Assert.Contains("<script>alert(1)</script>", view.Find(".label .name").ParentElement!.ParentElement!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Finding_AtItsPlace_ShowsItsSentence()
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Fewer", j => RoomActs.With(j, "family", r => r with { Counts = [.. r.Counts.Where(c => c.Kind is not DeviceKind.DuplexReceptacle)] }), Token);
        var view = Draw(await PricedAsync());
        view.Find("g.found.mend").Click();
        Assert.Contains("210.52", view.Find(".card").TextContent, StringComparison.Ordinal);
    }

    // Bedroom 1 and its first receptacle are on the second floor; the plan opens on the first.
    [Fact]
    public async Task Find_OfARoomAndADevice_TurnsToTheirLevelAndMarksThem()
    {
        var priced = await OpenSampleAsync("two-storey-house");
        var view = Draw(priced, "bed1", "bed1/duplex_receptacle-1");
        Assert.Contains("Bedroom 1", view.Find(".stage svg").TextContent, StringComparison.Ordinal);
        Assert.Single(view.FindAll("path.sought"));
        Assert.Single(view.FindAll("circle.sought"));
        Assert.Empty(Draw(priced).FindAll(".sought"));
    }

    [Fact]
    public async Task Find_OfACircuit_TakesItInHand()
    {
        var priced = await OpenSampleAsync();
        Assert.Equal("true", Draw(priced, priced.Estimate.Wiring.Circuits[1].Id).Find("[data-circuit='2']").GetAttribute("aria-pressed"));
    }

    [Fact]
    public async Task Finding_InTheList_LeadsToItsPlaceOnThePlan()
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Fewer", j => RoomActs.With(j, "family", r => r with { Counts = [.. r.Counts.Where(c => c.Kind is not DeviceKind.DuplexReceptacle)] }), Token);
        var priced = await PricedAsync();
        var finding = priced.Estimate.Findings.First(f => f.Code == "receptacle-spacing");
        var row = Render<Web.Findings.FindingRow>(p => p.Add(r => r.Finding, finding).Add(r => r.Priced, priced).Add(r => r.Number, 1));
        Assert.Equal("/jobs/basement-finish/plan?find=family", row.FindAll("a").Single(a => a.TextContent == "Show on plan").GetAttribute("href"));
    }

    private IRenderedComponent<PlanView> Draw(PricedJob priced, params string[] find) => Render<PlanView>(p => p.Add(v => v.Priced, priced).Add(v => v.Find, find));
}
