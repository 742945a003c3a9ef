using Bunit;
using Estimator.Engine.Explanations;
using Estimator.Web.Figures;
using Estimator.Web.Takeoff;

namespace Estimator.Web.Tests.Takeoff;

public sealed class TakeoffPageTests : WebContext
{
    [Fact]
    public async Task Render_Sample_PrintsEveryLineOfTheEngineOnceInItsCategory()
    {
        var priced = await OpenSampleAsync();

        var page = Render<TakeoffPage>(p => p.Add(t => t.JobId, Desk.Job.Id).AddCascadingValue(priced.Source));

        var printed = page.FindAll(".category tbody tr").Select(r => (r.Children[0].FirstChild!.TextContent.Trim(), r.QuerySelector("td.r .n")!.TextContent));
        var lines = priced.Estimate.Takeoff.Lines.GroupBy(l => l.Category).SelectMany(g => g).Select(l => (l.Description, FigureText.Of(l.Quantity).Number));
        Assert.Equal(lines, printed);
    }

    [Fact]
    public async Task Categories_EachTotal_IsTheSumOfItsLines()
    {
        var categories = ItemCategory.Of(await OpenSampleAsync());

        Assert.All(categories.Where(c => c.Total is not null), c => Assert.Equal(c.Lines.Sum(l => l.Quantity.Value), c.Total!.Value.Value));
        Assert.Contains(categories, c => c is { Id: "cable", Total: not null });
    }

    [Fact]
    public async Task Categories_OfTheSamples_HaveWordsOfTheTrade()
    {
        var categories = ItemCategory.Of(await OpenSampleAsync("two-storey-house"));

        Assert.All(categories, c => Assert.NotEqual(c.Id, c.Title));
    }

    [Fact]
    public async Task Names_SeveralCircuits_AreCountedAndRoomsCutShort()
    {
        var estimate = (await OpenSampleAsync("two-storey-house")).Estimate;
        var names = new ServedNames(estimate);
        var rooms = estimate.House.Job.Levels.SelectMany(l => l.Rooms).Select(r => r.Id).Take(6).ToList();

        Assert.Equal("3 circuits", names.Few([.. estimate.Wiring.Circuits.Take(3).Select(c => c.Id)]));
        Assert.Equal(estimate.Wiring.Circuits[0].Name, names.Few([estimate.Wiring.Circuits[0].Id]));
        Assert.EndsWith(" and 2 more", names.Few([.. rooms]), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Total_OfACategory_OpensToItsLines()
    {
        var priced = await OpenSampleAsync();
        var cable = ItemCategory.Of(priced).Single(c => c.Id == "cable");

        var node = cable.Source.Book[cable.Total!.Value.Node];

        Assert.Equal(Operation.Sum, node.Operation);
        Assert.Equal(cable.Lines.Select(l => l.Quantity.Node), node.Inputs);
    }
}
