using Estimator.Data.Jobs;
using Estimator.Data.Tests.Databases;
using Estimator.Engine.House;
using Estimator.TestKit;
using Microsoft.Extensions.DependencyInjection;
using static Estimator.Data.Tests.Jobs.Editing;

namespace Estimator.Data.Tests.Jobs;

/// <summary>Which jobs a list shows, on either database.</summary>
public abstract class ListTests(TestDatabase database)
{
    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("", null, false, "c,b,a")]
    [InlineData("KITCHEN", null, false, "b,a")]
    [InlineData("\u00c9t\u00e9", null, false, "c")]
    [InlineData("kitchen", JobState.Won, false, "a")]
    [InlineData("", JobState.Draft, false, "c,b")]
    [InlineData("nothing of the kind", null, false, "")]
    [InlineData("", null, true, "old")]
    public async Task List_ByTextStateAndArchive_GivesTheLastChangedFirst(string text, JobState? state, bool archived, string ids)
    {
        var clock = new StoppedClock(DateTimeOffset.UnixEpoch);
        await using var services = await database.NewCompanyAsync(clock);
        var store = services.GetRequiredService<JobStore>();
        foreach (var (id, name) in new[] { ("old", "Old kitchen"), ("a", "Kitchen"), ("b", "New kitchens"), ("c", "\u00e9t\u00c9") })
        {
            clock.Now += TimeSpan.FromMinutes(1);
            await store.CreateAsync(SmallJobs.OneRoom(RoomKind.Kitchen) with { Id = id, Name = name }, Who, Token);
        }

        await store.SetArchivedAsync("old", true, Token);
        await store.SetStateAsync("a", JobState.Won, Token);
        var listed = await store.ListAsync(new JobFilter { Text = text, State = state, Archived = archived }, Token);
        Assert.Equal(ids, string.Join(',', listed.Select(j => j.Id)));
    }

    [Fact]
    public async Task State_OfAJob_OutlivesTheArchive()
    {
        var store = await database.NewStoreAsync();
        await store.CreateAsync(SmallJobs.OneRoom(RoomKind.Kitchen), Who, Token);
        Assert.True(await store.SetStateAsync("small", JobState.Sent, Token));
        Assert.True(await store.SetArchivedAsync("small", true, Token));
        Assert.True(await store.SetArchivedAsync("small", false, Token));
        Assert.Equal(JobState.Sent, Assert.Single(await store.ListAsync(JobFilter.All, Token)).State);
        Assert.False(await store.SetStateAsync("none", JobState.Sent, Token));
    }

    [Fact]
    public async Task Jobs_OfAnotherCompany_AreNeitherSeenNorTouched()
    {
        var (mine, theirs) = (await database.NewStoreAsync(), await database.NewStoreAsync());
        var job = (await mine.CreateAsync(SmallJobs.OneRoom(RoomKind.Kitchen), Who, Token)).Job;
        await mine.SetArchivedAsync("small", true, Token);
        Assert.Null(await theirs.LoadAsync("small", Token));
        Assert.Null(await theirs.LoadAtAsync("small", 0, Token));
        Assert.Null(await theirs.CopyAsync("small", "copy", Who, Token));
        Assert.Empty(await theirs.ListAsync(new JobFilter { Archived = true }, Token));
        Assert.False(await theirs.SetStateAsync("small", JobState.Lost, Token));
        Assert.False(await theirs.SetArchivedAsync("small", false, Token));
        Assert.False(await theirs.DeleteAsync("small", Token));
        await theirs.AppendAsync<JobGone>("small", 0, job.Renamed("theirs", "e1"));
        Assert.Equal("small", (await theirs.CreateAsync(job, Who, Token)).Job.Id);
        Assert.Equal(job.Name, (await mine.LoadAsync("small", Token))!.Job.Name);
    }
}
