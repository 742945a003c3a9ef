using Bunit;
using Estimator.Engine.Changes;
using Estimator.Engine.House;
using Estimator.Web.Jobs;
using Estimator.Web.Rooms;

namespace Estimator.Web.Tests.Rooms;

public sealed class RoomsPageTests : WebContext
{
    [Fact]
    public async Task Type_CountInTheGrid_StoredInTheJob()
    {
        await OpenSampleAsync();
        var page = RenderSettled();

        await page.InvokeAsync(() => page.Find("input[aria-label='Family room, receptacle']").ChangeAsync(new() { Value = "14" }));

        Assert.Equal(14, RoomActs.Count(Desk.Job.Levels[0].Rooms[0], DeviceKind.DuplexReceptacle));
        Assert.Equal("Family room: receptacles 12 to 14", Desk.UndoTitle);
    }

    [Fact]
    public async Task Fewer_WhereAllStandInTheirPlace_TakesTheLastOutWithWhatNamedIt()
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Frozen", _ => FrozenWiring.Pin(Desk.Priced!.Estimate), Token);
        await PricedAsync();
        var page = RenderSettled();
        var gone = Desk.Job.Levels[0].Rooms[0].Placed.Last(p => p.Kind is DeviceKind.DuplexReceptacle).Id;

        await page.InvokeAsync(() => page.FindAll("button[aria-label='One receptacle fewer']")[0].ClickAsync(new()));

        Assert.Equal(11, RoomActs.Placed(Desk.Job.Levels[0].Rooms[0], DeviceKind.DuplexReceptacle));
        Assert.DoesNotContain(gone, Desk.Job.Pins.Circuits.SelectMany(c => c.Outlets));
    }

    [Theory]
    [InlineData("=1+1")]
    [InlineData("@SUM(A1)")]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\ud83d\udd0c")]
    public async Task Type_NoCount_CountStays(string text)
    {
        await OpenSampleAsync();
        var page = RenderSettled();

        await page.InvokeAsync(() => page.Find("input[aria-label='Family room, receptacle']").ChangeAsync(new() { Value = text }));

        Assert.Equal(12, RoomActs.Count(Desk.Job.Levels[0].Rooms[0], DeviceKind.DuplexReceptacle));
    }

    [Theory]
    [InlineData("=1+1")]
    [InlineData("<img src=x onerror=alert(1)>")]
    [InlineData("\ud83d\udd0c room")]
    public async Task Name_AnyText_ShownAsText(string name)
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Name", j => RoomActs.With(j, "family", r => r with { Name = name }), Token);
        await PricedAsync();

        var page = RenderSettled();

        Assert.Equal(name, page.Find(".roomname b").TextContent);
        Assert.Empty(page.FindAll("img"));
    }

    [Fact]
    public async Task Template_Bath_HasWhatTheEditionAsksFor()
    {
        await OpenSampleAsync();
        var page = RenderSettled();

        await page.InvokeAsync(() => page.FindAll(".tpl .lk").First(b => b.TextContent == "Bath").ClickAsync(new()));

        var room = Desk.Job.Levels[0].Rooms[^1];
        Assert.Equal((RoomKind.Bathroom, "Bath"), (room.Kind, room.Name));
        // NEC 210.52(D): a receptacle at each basin.
        Assert.True(room.Counts.Any(c => c.Kind.IsReceptacle() && c.Serves is ServedPlace.Basin));
    }

    // What is found is pressed on the page's own thread, or a figure that comes in between would have redrawn it.
    // Drawn once with the job and again with its figures: only then do its elements stay.
    private IRenderedComponent<RoomsPage> RenderSettled()
    {
        var page = Render<RoomsPage>(p => p.Add(x => x.JobId, Desk.Job.Id));
        page.WaitForElement("tfoot [data-n]", TimeSpan.FromSeconds(20));
        return page;
    }
}
