using System.Text;
using Estimator.Data.Companies;
using Estimator.Data.Jobs;
using Estimator.Web.Jobs;
using Estimator.Web.Revisions;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Web.Tests.Revisions;

public sealed class RevisionFilesTests : WebContext
{
    [Theory]
    [InlineData("bid.xlsx", "PK")]
    [InlineData("customer.xlsx", "PK")]
    [InlineData("budget.xlsx", "PK")]
    [InlineData("purchase.xlsx", "PK")]
    [InlineData("customer.pdf", "%PDF-1.")]
    [InlineData("permit.pdf", "%PDF-1.")]
    [InlineData("crew.pdf", "%PDF-1.")]
    [InlineData("budget.pdf", "%PDF-1.")]
    [InlineData("crew.xlsx", "PK")]
    [InlineData("permit.xlsx", "PK")]
    [InlineData("bid.csv", "\uFEFFpart,line")]
    [InlineData("pull-list.csv", "\uFEFFrun,circuit")]
    [InlineData("boxes.csv", "\uFEFFlabel,box,circuit")]
    [InlineData("box-contents.csv", "\uFEFFlabel,box,joint")]
    [InlineData("tools.csv", "\uFEFFkind,item")]
    [InlineData("tests.csv", "\uFEFFcircuit_or_panel,name")]
    [InlineData("left-over.csv", "\uFEFFitem,description,coil")]
    [InlineData("explanations.csv", "\uFEFFnode,label")]
    [InlineData("alternates.csv", "\uFEFFkind,number")]
    [InlineData("unit-prices.csv", "\uFEFFwhat,tried_in")]
    [InlineData("schedule-of-values.csv", "\uFEFFline,work")]
    [InlineData("job.json", "{")]
    [InlineData("takeoff.csv", "\uFEFFitem,category")]
    [InlineData("labor.csv", "\uFEFFitem,description")]
    [InlineData("purchase.csv", "\uFEFFitem,description")]
    [InlineData("panel-schedule.csv", "\uFEFFpanel,space,leg")]
    [InlineData("loads.csv", "\uFEFFcalculation,panel,line")]
    [InlineData("cut-plan.csv", "\uFEFFitem,coil")]
    public async Task HandOut_SavedRevision_IsTheFileUnderTheJobsName(string file, string start)
    {
        await OpenSampleAsync();
        await Desk.SaveRevisionAsync("", Token);

        var given = Assert.IsType<FileContentHttpResult>(await HandOutAsync(1, file));

        Assert.StartsWith(start, Encoding.UTF8.GetString(given.FileContents.Span), StringComparison.Ordinal);
        Assert.EndsWith($"-revision-1-{file}", given.FileDownloadName, StringComparison.Ordinal);
    }

    [Fact]
    public async Task HandOut_EditedSince_IsStillTheSavedTakeoff()
    {
        await OpenSampleAsync();
        await Desk.SaveRevisionAsync("", Token);
        var saved = await TextAsync("takeoff.csv");

        var room = RoomActs.All(Desk.Job).First();
        await Desk.EditAsync("More receptacles", j => RoomActs.Add(j, room.Id, Engine.House.DeviceKind.DuplexReceptacle, more: 3), Token);

        Assert.Equal(saved, await TextAsync("takeoff.csv"));
    }

    [Theory]
    [InlineData(2, "bid.xlsx")]
    [InlineData(1, "secret.txt")]
    public async Task HandOut_NothingSuch_IsNotFound(int number, string file)
    {
        await OpenSampleAsync();
        await Desk.SaveRevisionAsync("", Token);

        Assert.IsType<NotFound>(await HandOutAsync(number, file));
    }

    private async Task<string> TextAsync(string file) => Encoding.UTF8.GetString(Assert.IsType<FileContentHttpResult>(await HandOutAsync(1, file)).FileContents.Span);

    private Task<Microsoft.AspNetCore.Http.IResult> HandOutAsync(int number, string file) => RevisionFiles.HandOutAsync(
        Desk.Job.Id, number, file, Services.GetRequiredService<JobStore>(), Services.GetRequiredService<CompanyStore>(), Services.GetRequiredService<EstimateShelf>(), Token);
}
