using Estimator.Data.Jobs;
using Estimator.Data.Tests.Databases;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.TestKit;
using static Estimator.Data.Tests.Jobs.Editing;

namespace Estimator.Data.Tests.Jobs;

/// <summary>What a store of jobs keeps, on either database.</summary>
public abstract class JobStoreTests(TestDatabase database)
{
    private static readonly Job Small = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 4));

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Load_AfterCreate_GivesTheSameJob()
    {
        var store = await database.NewStoreAsync();
        await store.CreateAsync(Small, Who, Token);
        var stored = await store.LoadAsync("small", Token);
        Assert.Equal(Small.Text(), stored!.Job.Text());
        Assert.Equal((0, JobState.Draft, false), (stored.Version, stored.State, stored.Archived));
        Assert.Empty(stored.Tail);
    }

    [Fact]
    public async Task Load_OfNoJob_GivesNothing() => Assert.Null(await (await database.NewStoreAsync()).LoadAsync("none", Token));

    [Fact]
    public async Task Create_WithATakenId_GivesTheNextFreeOne()
    {
        var store = await database.NewStoreAsync();
        string[] ids = [await IdAsync(), await IdAsync(), await IdAsync()];
        Assert.Equal(["small", "small-2", "small-3"], ids);
        Assert.Equal("small-3", (await store.LoadAsync("small-3", Token))!.Job.Id);

        async Task<string> IdAsync() => (await store.CreateAsync(Small, Who, Token)).Job.Id;
    }

    [Fact]
    public async Task Create_WithAnIdThatIsTooLong_CutsIt()
    {
        var store = await database.NewStoreAsync();
        var first = await store.CreateAsync(Small with { Id = new string('x', 5000) }, Who, Token);
        var second = await store.CreateAsync(Small with { Id = new string('x', 5000) }, Who, Token);
        Assert.Equal(new string('x', 100), first.Job.Id);
        Assert.Equal(new string('x', 98) + "-2", second.Job.Id);
    }

    [Fact]
    public async Task Create_OfAJobThatCouldNotBeRead_IsRefused()
    {
        var store = await database.NewStoreAsync();
        var e = await Assert.ThrowsAsync<ArgumentException>(() => store.CreateAsync(Small with { Levels = [] }, Who, Token));
        Assert.Contains("$.levels", e.Message, StringComparison.Ordinal);
        Assert.Empty(await store.ListAsync(JobFilter.All, Token));
    }

    [Fact]
    public async Task Append_OnTheCurrentVersion_IsStoredWithItsLog()
    {
        var store = await database.NewStoreAsync();
        var created = await store.CreateAsync(Small, Who, Token);
        var edit = created.Job.Renamed("Other name", "e1");
        var appended = await store.AppendAsync<Appended>("small", 0, edit);
        var stored = (await store.LoadAsync("small", Token))!;
        Assert.Equal((1, "Other name"), (appended.Version, appended.Job.Name));
        Assert.Equal(appended.Job.Text(), stored.Job.Text());
        Assert.Equal((1, edit, Who), (stored.Tail.Single().Sequence, stored.Tail.Single().Edit, stored.Tail.Single().Who));
    }

    [Fact]
    public async Task Append_BesideWhatOthersDid_MergesBoth()
    {
        var store = await database.NewStoreAsync();
        var created = await store.CreateAsync(Small, Who, Token);
        await store.AppendAsync<Appended>("small", 0, created.Job.Renamed("Theirs", "e1"));
        var mine = await store.AppendAsync<Appended>("small", 0, created.Job.Noted("Mine", "e2"));
        Assert.Equal(("Theirs", "Mine", 2), (mine.Job.Name, mine.Job.Notes, mine.Version));
        Assert.Equal("e1", Assert.Single(mine.Theirs).Edit.Id);
    }

    [Fact]
    public async Task Append_AgainstWhatOthersDid_ReportsBothSidesAndStoresNothing()
    {
        var store = await database.NewStoreAsync();
        var created = await store.CreateAsync(Small, Who, Token);
        await store.AppendAsync<Appended>("small", 0, created.Job.Renamed("Theirs", "e1"));
        var conflict = await store.AppendAsync<AppendConflict>("small", 0, created.Job.Renamed("Mine", "e2"));
        var side = Assert.Single(conflict.Conflicts);
        Assert.Equal(("name", "\"Mine\"", "\"Theirs\""), (side.Field, side.Mine, side.Theirs));
        Assert.Equal(("Theirs", 1), (conflict.Current.Job.Name, conflict.Current.Version));
        Assert.Single(await store.HistoryAsync("small", token: Token));
    }

    [Fact]
    public async Task Append_OfTheSameWish_IsNoConflict()
    {
        var store = await database.NewStoreAsync();
        var created = await store.CreateAsync(Small, Who, Token);
        await store.AppendAsync<Appended>("small", 0, created.Job.Renamed("Both", "e1"));
        Assert.Equal("Both", (await store.AppendAsync<Appended>("small", 0, created.Job.Renamed("Both", "e2"))).Job.Name);
    }

    [Fact]
    public async Task Append_SentAgain_IsStoredOnce()
    {
        var store = await database.NewStoreAsync();
        var created = await store.CreateAsync(Small, Who, Token);
        var edit = created.Job.Renamed("Once", "e1");
        await store.AppendAsync<Appended>("small", 0, edit);
        await store.AppendAsync<Appended>("small", 1, created.Job.Noted("Between", "e2"));
        var again = await store.AppendAsync<Appended>("small", 0, edit);
        Assert.Equal(("Once", "Between", 2), (again.Job.Name, again.Job.Notes, again.Version));
        Assert.Equal(["e1", "e2"], (await store.HistoryAsync("small", token: Token)).Select(e => e.Edit.Id));
    }

    [Fact]
    public async Task Append_OfAnotherEditUnderAUsedId_Throws()
    {
        var store = await database.NewStoreAsync();
        var created = await store.CreateAsync(Small, Who, Token);
        await store.AppendAsync<Appended>("small", 0, created.Job.Renamed("One", "e1"));
        await Assert.ThrowsAsync<ArgumentException>(() => store.AppendAsync("small", 1, created.Job.Noted("Two", "e1"), Who, Token));
    }

    [Fact]
    public async Task Append_ThatWouldBreakTheJob_IsRefusedWithTheReason()
    {
        var store = await database.NewStoreAsync();
        var created = await store.CreateAsync(Small, Who, Token);
        var edit = created.Job.To(created.Job with { Panels = [created.Job.Panels[0] with { Room = "no such room" }] }, "e1");
        var refused = await store.AppendAsync<AppendRefused>("small", 0, edit);
        Assert.Contains("no such room", refused.Problems[0].ToString(), StringComparison.Ordinal);
        Assert.Equal((0, Small.Text()), (refused.Current.Version, refused.Current.Job.Text()));
    }

    [Fact]
    public async Task Append_OnAVersionThatIsNotThereYet_Throws()
    {
        var store = await database.NewStoreAsync();
        var created = await store.CreateAsync(Small, Who, Token);
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => store.AppendAsync("small", 1, created.Job.Renamed("x", "e1"), Who, Token));
    }

    [Fact]
    public async Task Append_OfTheInverse_UndoesAndKeepsBothInTheLog()
    {
        var store = await database.NewStoreAsync();
        var created = await store.CreateAsync(Small, Who, Token);
        var edit = created.Job.Renamed("Undone", "e1");
        await store.AppendAsync<Appended>("small", 0, edit);
        var undone = await store.AppendAsync<Appended>("small", 1, JobEditing.Inverse(edit) with { Id = "e2", Title = "Undo" });
        Assert.Equal((Small.Text(), 2), (undone.Job.Text(), undone.Version));
    }

    [Fact]
    public async Task Append_ToADeletedJob_SaysThatItIsGone()
    {
        var store = await database.NewStoreAsync();
        await store.CreateAsync(Small, Who, Token);
        await store.SetArchivedAsync("small", true, Token);
        Assert.True(await store.DeleteAsync("small", Token));
        Assert.Equal("small", (await store.AppendAsync<JobGone>("small", 0, Small.Renamed("x", "e1"))).JobId);
    }

    [Fact]
    public async Task Delete_OfAWorkingJob_IsRefused()
    {
        var store = await database.NewStoreAsync();
        await store.CreateAsync(Small, Who, Token);
        await Assert.ThrowsAsync<InvalidOperationException>(() => store.DeleteAsync("small", Token));
        Assert.NotNull(await store.LoadAsync("small", Token));
    }

    [Fact]
    public async Task Copy_StartsAsTheJobStandsWithALogOfItsOwn()
    {
        var store = await database.NewStoreAsync();
        var created = await store.CreateAsync(Small, Who, Token);
        await store.AppendAsync<Appended>("small", 0, created.Job.Noted("kept", "e1"));
        var copy = (await store.CopyAsync("small", "The copy", Who, Token))!;
        Assert.Equal(("small-2", "The copy", "kept", 0), (copy.Job.Id, copy.Job.Name, copy.Job.Notes, copy.Version));
        await store.AppendAsync<Appended>("small-2", 0, copy.Job.Noted("of the copy", "e1"));
        Assert.Equal("kept", (await store.LoadAsync("small", Token))!.Job.Notes);
    }
}
