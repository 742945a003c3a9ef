using Estimator.Data.Companies;
using Estimator.Data.Jobs;
using Estimator.Data.Tests.Databases;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.TestKit;
using Microsoft.Extensions.DependencyInjection;
using static Estimator.Data.Tests.Jobs.Editing;

namespace Estimator.Data.Tests.Jobs;

/// <summary>What was acknowledged outlives the program, on either database.</summary>
public abstract class DurabilityTests(TestDatabase database)
{
    private const int Kills = 20;

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Append_Acknowledged_OutlivesTwentyKills()
    {
        await using var services = await database.NewCompanyAsync();
        var store = services.GetRequiredService<JobStore>();
        var created = await store.CreateAsync(SmallJobs.OneRoom(RoomKind.Office), Who, Token);
        List<string> acknowledged = [];
        var random = new Random(20_251);
        for (var run = 1; run <= Kills; run++)
        {
            acknowledged.AddRange(await AppendUntilKilledAsync(services.GetRequiredService<CurrentCompany>().Id, run, random));
        }

        var log = await store.HistoryAsync("small", token: Token);
        var ids = log.Select(e => e.Edit.Id).ToList();
        Assert.True(acknowledged.Count >= 2 * Kills, $"{acknowledged.Count} edits were acknowledged");
        Assert.Equal(acknowledged, ids.Where(acknowledged.ToHashSet().Contains));

        // At each kill at most the one edit on its way may stand in the log without having been acknowledged.
        Assert.InRange(ids.Count - acknowledged.Count, 0, Kills);
        Assert.Equal(Enumerable.Range(1, log.Length), log.Select(e => e.Sequence));
        var replayed = log.Aggregate(created.Job, (job, e) => JobEditing.Apply(job, e.Edit).Job);
        Assert.Equal(replayed.Text(), (await store.LoadAsync("small", Token))!.Job.Text());
    }

    private async Task<IEnumerable<string>> AppendUntilKilledAsync(long company, int run, Random random)
    {
        using var editor = EditorProcess.Start("append", database.AddressText, FormattableString.Invariant($"{company}"), "small", FormattableString.Invariant($"run{run}"));
        Assert.Equal("ready", await editor.LineAsync());
        List<string> said = [];
        for (var i = random.Next(2, 12); i > 0; i--)
        {
            said.Add(await editor.LineAsync() ?? throw new InvalidOperationException(await editor.FailureAsync()));
        }

        await Task.Delay(random.Next(0, 8), Token);
        said.AddRange(await editor.KillAsync());
        return said.Select(line => line.Split(' ')[1]);
    }
}
