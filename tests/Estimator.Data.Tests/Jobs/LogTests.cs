using Estimator.Data.Jobs;
using Estimator.Data.Tests.Databases;
using Estimator.Engine.House;
using Estimator.TestKit;
using Estimator.TestKit.Houses;
using Microsoft.Extensions.DependencyInjection;
using static Estimator.Data.Tests.Jobs.Editing;

namespace Estimator.Data.Tests.Jobs;

/// <summary>What the log keeps, and what comes back from it, on either database.</summary>
public abstract class LogTests(TestDatabase database)
{
    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public async Task SaveThenLoad_OfRandomHouses_IsIdentity()
    {
        var store = await database.NewStoreAsync();
        for (var number = 1; number <= 100; number++)
        {
            var house = HouseGen.Number(number) with { Id = FormattableString.Invariant($"house-{number}") };
            await store.CreateAsync(house, Who, Token);
            Assert.Equal(house.Text(), (await store.LoadAsync(house.Id, Token))!.Job.Text());
        }
    }

    [Fact]
    public async Task LoadAt_EveryVersionBeyondSnapshots_GivesTheJobOfThatTime()
    {
        const int Edits = 2 * JobStore.EditsPerSnapshot + 7;
        var store = await database.NewStoreAsync();
        var job = (await store.CreateAsync(SmallJobs.OneRoom(RoomKind.Hall), Who, Token)).Job;
        List<string> texts = [job.Text()];
        for (var version = 0; version < Edits; version++)
        {
            var edit = version % 2 == 0 ? job.Renamed($"Name {version}", $"e{version}") : job.Noted($"Notes {version}", $"e{version}");
            job = (await store.AppendAsync<Appended>("small", version, edit)).Job;
            texts.Add(job.Text());
        }

        for (var version = 0; version <= Edits; version++)
        {
            Assert.Equal(texts[version], (await store.LoadAtAsync("small", version, Token))!.Text());
        }

        Assert.Null(await store.LoadAtAsync("small", Edits + 1, Token));
        Assert.Null(await store.LoadAtAsync("none", 0, Token));
    }

    [Fact]
    public async Task Load_OfALongLog_GivesItsTail()
    {
        var store = await database.NewStoreAsync();
        var job = (await store.CreateAsync(SmallJobs.OneRoom(RoomKind.Hall), Who, Token)).Job;
        for (var version = 0; version < StoredJob.LongestTail + 3; version++)
        {
            job = (await store.AppendAsync<Appended>("small", version, job.Noted($"{version}", $"e{version}"))).Job;
        }

        var tail = (await store.LoadAsync("small", Token))!.Tail;
        Assert.Equal(Enumerable.Range(4, StoredJob.LongestTail), tail.Select(e => e.Sequence));
    }

    [Fact]
    public async Task History_ByTargetAndPage_GivesWhatTouchedIt()
    {
        var store = await database.NewStoreAsync();
        var job = (await store.CreateAsync(SmallJobs.OneRoom(RoomKind.Hall), Who, Token)).Job;
        job = (await store.AppendAsync<Appended>("small", 0, job.Renamed("n", "e1"))).Job;
        job = (await store.AppendAsync<Appended>("small", 1, job.To(job.With(r => r with { Name = "Long hall" }), "e2"))).Job;
        job = (await store.AppendAsync<Appended>("small", 2, job.To(job.With(r => r with { Name = "Hall" }), "e3"))).Job;
        Assert.Equal(["e2", "e3"], (await store.HistoryAsync("small", target: "levels/L1/rooms/R1", token: Token)).Select(e => e.Edit.Id));
        Assert.Equal(["e2"], (await store.HistoryAsync("small", after: 1, most: 1, token: Token)).Select(e => e.Edit.Id));
    }

    [Fact]
    public async Task History_TellsTheTimeOfTheClock()
    {
        var clock = new StoppedClock(new DateTimeOffset(2026, 3, 1, 12, 0, 0, TimeSpan.Zero));
        await using var services = await database.NewCompanyAsync(clock);
        var store = services.GetRequiredService<JobStore>();
        var job = (await store.CreateAsync(SmallJobs.OneRoom(RoomKind.Hall), Who, Token)).Job;
        clock.Now += TimeSpan.FromTicks(1);
        await store.AppendAsync<Appended>("small", 0, job.Renamed("n", "e1"));
        var listed = Assert.Single(await store.ListAsync(JobFilter.All, Token));
        Assert.Equal(clock.Now, Assert.Single(await store.HistoryAsync("small", token: Token)).At);
        Assert.Equal((clock.Now - TimeSpan.FromTicks(1), clock.Now), (listed.Created, listed.Changed));
    }

    [Theory]
    [InlineData("=1+1")]
    [InlineData("@SUM(A1)")]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("'; DROP TABLE jobs; --")]
    [InlineData("100% _ \\ done")]
    [InlineData("\U0001F50C wiring \u00e9\u0301")]
    [InlineData("nul \0 and half \ud83d a pair")]
    public async Task Text_OfAnyKind_IsStoredFoundAndNeverRun(string text)
    {
        var store = await database.NewStoreAsync();
        var job = (await store.CreateAsync(SmallJobs.OneRoom(RoomKind.Hall), Who, Token)).Job;
        var name = text.Replace('\ud83d', '\ufffd') is var whole && text.Contains("half", StringComparison.Ordinal) ? whole : text;
        await store.AppendAsync<Appended>("small", 0, job.Renamed(name, "e1") with { Title = name });
        await store.AppendAsync("small", 1, job.Noted("more", "e2"), text, Token);
        Assert.Equal(name, (await store.LoadAsync("small", Token))!.Job.Name);
        Assert.Equal(name, (await store.HistoryAsync("small", token: Token))[0].Edit.Title);
        Assert.Equal("small", Assert.Single(await store.ListAsync(new JobFilter { Text = text.ToUpperInvariant() }, Token)).Id);
        Assert.Empty(await store.ListAsync(new JobFilter { Text = text + "x" }, Token));
    }

    [Fact]
    public async Task Text_OfTenThousandCharacters_IsStoredWhole()
    {
        var store = await database.NewStoreAsync();
        var job = (await store.CreateAsync(SmallJobs.OneRoom(RoomKind.Hall), Who, Token)).Job;
        var text = new string('\u00fc', 10_000);
        await store.AppendAsync<Appended>("small", 0, job.Renamed(text, "e1") with { Title = text });
        Assert.Equal(text, Assert.Single(await store.ListAsync(JobFilter.All, Token)).Name);
    }
}
