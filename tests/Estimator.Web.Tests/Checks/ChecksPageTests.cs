using Bunit;
using Estimator.Engine.House;
using Estimator.Web.Checks;
using Estimator.Web.Jobs;

namespace Estimator.Web.Tests.Checks;

public sealed class ChecksPageTests : WebContext
{
    // The shower of the sample is known by its middle alone; a receptacle near it takes a tape.
    [Fact]
    public async Task Unjudged_OfThisHouse_StandsFirstAndLeadsToThePlan()
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Near", j => RoomActs.With(j, "bath", r => r with
        {
            Placed = [new PlacedDevice { Id = "near", Kind = DeviceKind.GfciReceptacle, Wall = new WallSpot(4, Engine.Measures.Length.FromInches(38)) }],
        }), Token);
        await PricedAsync();
        var page = Render<ChecksPage>(p => p.Add(x => x.JobId, "basement-finish"));

        var first = page.Find("aside .held li");
        Assert.Contains("Measure it", first.TextContent, StringComparison.Ordinal);
        Assert.Equal("/jobs/basement-finish/plan?find=near&find=bath", first.QuerySelector("a")!.GetAttribute("href"));
    }

    [Fact]
    public async Task Held_OfTheSample_NamesWhatAppliedAndNothingElse()
    {
        var priced = await OpenSampleAsync();
        var page = Render<ChecksPage>(p => p.Add(x => x.JobId, "basement-finish"));
        var held = page.Find(".held.two-up").TextContent;
        Assert.Contains("404.2(C)", held, StringComparison.Ordinal);
        Assert.DoesNotContain("210.70(A)(2)(3)", held, StringComparison.Ordinal);
        Assert.Equal(Engine.Checks.HeldRules.Of(priced.Estimate.AppliedRules, priced.Estimate.Findings).Length, page.FindAll(".held.two-up li").Count);
    }
}
