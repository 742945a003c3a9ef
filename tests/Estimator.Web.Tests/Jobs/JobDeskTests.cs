using Estimator.Data.Jobs;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Web.Jobs;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Web.Tests.Jobs;

public sealed class JobDeskTests : WebContext
{
    [Fact]
    public async Task Edit_OneMoreReceptacle_StoredPricedAndUndone()
    {
        var before = await OpenSampleAsync();

        Assert.True(await Desk.EditAsync("Family room: one more receptacle", j => RoomActs.Add(j, "family", DeviceKind.DuplexReceptacle), Token));
        var after = await PricedAsync();

        Assert.True(after.Estimate.Bid.Price.Value > before.Estimate.Bid.Price.Value);
        Assert.Equal("Family room: one more receptacle", Desk.UndoTitle);
        Assert.True(await Desk.UndoAsync());
        Assert.Equal(before.Estimate.Bid.Price.Value, (await PricedAsync()).Estimate.Bid.Price.Value);
        Assert.Equal("Family room: one more receptacle", Desk.RedoTitle);
    }

    [Fact]
    public async Task Open_AfterUndo_AnotherTabKnowsWhatToRedo()
    {
        await OpenSampleAsync();
        await Desk.EditAsync("Rename", j => j with { Name = "Another name" }, Token);
        await Desk.UndoAsync();

        using var tab = Services.CreateScope();
        var second = tab.ServiceProvider.GetRequiredService<JobDesk>();
        Assert.True(await second.OpenAsync(Desk.Job.Id, Token));

        Assert.Null(second.UndoTitle);
        Assert.True(await second.RedoAsync());
        Assert.Equal("Another name", second.Job.Name);
    }

    [Fact]
    public async Task Edit_SameFieldInTwoTabs_ClashWithBothSidesAndMineOnTop()
    {
        await OpenSampleAsync();
        using var tab = Services.CreateScope();
        var second = tab.ServiceProvider.GetRequiredService<JobDesk>();
        await second.OpenAsync(Desk.Job.Id, Token);
        await Desk.EditAsync("Theirs", j => j with { Name = "Theirs" }, Token);

        Assert.False(await second.EditAsync("Mine", j => j with { Name = "Mine" }, Token));

        var conflict = Assert.Single(second.Clash!.Conflicts);
        Assert.Equal(("\"Mine\"", "\"Theirs\""), (conflict.Mine, conflict.Theirs));
        Assert.True(await second.TakeMineAsync());
        Assert.Equal("Mine", second.Job.Name);
    }

    [Fact]
    public async Task Edit_DifferentThingsInTwoTabs_BothKept()
    {
        await OpenSampleAsync();
        using var tab = Services.CreateScope();
        var second = tab.ServiceProvider.GetRequiredService<JobDesk>();
        await second.OpenAsync(Desk.Job.Id, Token);
        await Desk.EditAsync("Name", j => j with { Name = "New name" }, Token);

        Assert.True(await second.EditAsync("Height", j => j with { Levels = [j.Levels[0] with { CeilingHeight = Length.FromFeet(9) }] }, Token));

        var stored = await Services.GetRequiredService<JobStore>().LoadAsync(Desk.Job.Id, Token);
        Assert.Equal(("New name", Length.FromFeet(9)), (stored!.Job.Name, stored.Job.Levels[0].CeilingHeight));
    }

    [Fact]
    public async Task Edit_AgainstTheFormOfAJob_RefusedWithWhatIsAccepted()
    {
        await OpenSampleAsync();

        Assert.False(await Desk.EditAsync("Ceiling", j => j with { Levels = [j.Levels[0] with { CeilingHeight = Length.FromFeet(-3) }] }, Token));

        Assert.NotEmpty(Desk.Problems[0].Accepted);
        Assert.Equal(0, Desk.Version);
    }
}
