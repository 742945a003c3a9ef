using Bunit;
using Estimator.Engine.Alternates;
using Estimator.Engine.House;
using Estimator.Web.Alternates;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;

namespace Estimator.Web.Tests.Alternates;

public sealed class AlternatesPartTests : WebContext
{
    public static TheoryData<string> Keys => [.. UsualAlternate.All.Select(u => u.Key)];

    [Fact]
    public async Task Alternate_Added_IsPricedAndNotInThePrice()
    {
        var before = await OpenSampleAsync();
        var part = Render<AlternatesPart>();
        part.FindAll("button").Single(b => b.TextContent.Trim() == "Add alternate").Click();
        part.WaitForAssertion(() => Assert.Single(Desk.Job.Alternates), TimeSpan.FromSeconds(20));
        var after = await PricedAsync();
        Assert.Equal(before.Estimate.Bid.Price.Value, after.Estimate.Bid.Price.Value);
        var priced = AlternatePricing.For(after.Estimate, [Desk.Job.Alternates[0].Id], after.Catalogue.Parts).Value;
        part.WaitForAssertion(() => Assert.Contains(American.WholeDollars(priced.Price.Value), part.Find("tbody").TextContent, StringComparison.Ordinal), TimeSpan.FromSeconds(20));

        part.FindAll("button").Single(b => b.TextContent == "Take").Click();
        part.WaitForAssertion(() => Assert.Empty(Desk.Job.Alternates), TimeSpan.FromSeconds(20));
        Assert.Equal(priced.After.Bid.Price.Value, (await PricedAsync()).Estimate.Bid.Price.Value);
        await Desk.UndoAsync();
        Assert.Single(Desk.Job.Alternates);
    }

    [Fact]
    public async Task EachUsualAlternate_OfASentBid_CanStillBeTaken()
    {
        await OpenSampleAsync();
        var room = RoomActs.All(Desk.Job).First(r => RoomActs.Count(r, DeviceKind.SinglePoleSwitch) + RoomActs.Placed(r, DeviceKind.SinglePoleSwitch) > 0).Id;
        await Desk.EditAsync("Offer", job => job with { Alternates = [.. UsualAlternate.All.Select(u => u.Make(job, u.Key, room, 3))] }, Token);
        await PricedAsync();
        Assert.True(await Desk.FreezeAsync("Sent", (await Desk.ThoroughAsync()).Estimate));
        var priced = await PricedAsync();
        Assert.All(priced.Job.Alternates, a => Assert.True(AlternatePricing.For(priced.Estimate, [a.Id], priced.Catalogue.Parts) is { Ok: true }, a.Name));
    }

    [Fact]
    public async Task UnitPrices_AskedFor_AreTheEnginesAndGoWhenTheJobChanges()
    {
        var priced = await OpenSampleAsync();
        var part = Render<UnitPricesPart>();
        part.Find("button").Click();
        var expected = UnitPricing.For(priced.Estimate, priced.Catalogue.Parts);
        part.WaitForAssertion(() => Assert.Equal(expected.Select(u => u.What), part.FindAll("tbody tr td:first-child").Select(c => c.TextContent)), TimeSpan.FromSeconds(20));
        Assert.Equal(expected.Select(u => American.Dollars(u.Price.Value)), part.FindAll("tbody tr td:nth-child(4) .n").Select(c => c.TextContent));

        await Desk.EditAsync("Permit", job => job with { Bid = job.Bid with { Permit = Engine.Measures.Money.FromDollars(200) } }, Token);
        await PricedAsync();
        part.WaitForAssertion(() => Assert.Empty(part.FindAll("tbody")), TimeSpan.FromSeconds(20));
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public async Task Make_EachUsualAlternate_CanBeMadeAndHasAName(string key)
    {
        var job = (await OpenSampleAsync()).Job;
        var usual = UsualAlternate.All.Single(u => u.Key == key);
        var made = usual.Make(job, "a", RoomActs.All(job).First(r => RoomActs.Count(r, DeviceKind.SinglePoleSwitch) + RoomActs.Placed(r, DeviceKind.SinglePoleSwitch) > 0).Id, 3);
        Assert.NotEmpty(made.Name);
        Assert.NotEmpty(made.Changes);
        Assert.True(AlternateChanges.Applied(job with { Alternates = [made] }, ["a"]).Ok);
    }

    [Fact]
    public async Task Alternate_WhoseTargetIsGone_SaysSoInItsRow()
    {
        var job = (await OpenSampleAsync()).Job;
        var made = AlternateChanges.Of(job, "a", "One room larger", j => RoomActs.With(j, RoomActs.All(j).First().Id, r => r with { Name = "Other" }));
        var gone = made with { Changes = [.. made.Changes.Select(c => c.Replace("rooms/", "rooms/none", StringComparison.Ordinal))] };
        await Desk.EditAsync("Add", j => j with { Alternates = [gone] }, Xunit.TestContext.Current.CancellationToken);
        await PricedAsync();
        var part = Render<AlternatesPart>();
        part.WaitForAssertion(() => Assert.Contains("Can't be made", part.Find(".wrong").TextContent, StringComparison.Ordinal), TimeSpan.FromSeconds(20));
    }
}
