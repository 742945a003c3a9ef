using Estimator.Data.Jobs;
using Estimator.Data.Tests.Databases;
using Estimator.Engine.House;
using Estimator.TestKit;
using static Estimator.Data.Tests.Jobs.Editing;

namespace Estimator.Data.Tests.Jobs;

/// <summary>Two editors of one job, against a model of what must come out.</summary>
public abstract class InterleavingTests(TestDatabase database)
{
    private const int Interleavings = 1_000;

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Append_InAThousandRandomInterleavings_LosesNoUpdate()
    {
        var store = await database.NewStoreAsync();
        var (stored, conflicts, merges) = (0, 0, 0);
        for (var seed = 1; seed <= Interleavings; seed++)
        {
            var job = await store.CreateAsync(SmallJobs.OneRoom(RoomKind.Office) with { Id = FormattableString.Invariant($"job-{seed}") }, Who, Token);
            var run = new TwoEditors(store, job, new Random(seed));
            await run.PlayAsync(steps: 8);
            await run.JudgeAsync();
            (stored, conflicts, merges) = (stored + run.Stored, conflicts + run.Conflicts, merges + run.Merges);
        }

        // The interleavings are worth their name: each kind of outcome came up often.
        Assert.True(stored > Interleavings && conflicts > Interleavings / 4 && merges > Interleavings / 4, $"{stored} stored, {conflicts} conflicts, {merges} merges");
    }

    [Fact]
    public async Task Append_ByTwoAtTheSameTime_KeepsEachMark()
    {
        const int Marks = 40;
        var store = await database.NewStoreAsync();
        await store.CreateAsync(SmallJobs.OneRoom(RoomKind.Office) with { Notes = "" }, Who, Token);
        await Task.WhenAll(MarkAsync("a"), MarkAsync("b"));
        var marks = (await store.LoadAsync("small", Token))!.Job.Notes!.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var all = new[] { "a", "b" }.SelectMany(editor => Enumerable.Range(1, Marks).Select(i => $"{editor}{i}"));
        Assert.Equal(all.Order(StringComparer.Ordinal), marks.Order(StringComparer.Ordinal));
        Assert.Equal(marks.Length, (await store.HistoryAsync("small", token: Token)).Length);

        // Both add to one and the same text, so that each must have seen the other's marks.
        async Task MarkAsync(string editor)
        {
            await Task.Yield();
            var (seen, version, tries) = ((await store.LoadAsync("small", Token))!.Job, 0, 0);
            for (var mark = 1; mark <= Marks;)
            {
                var edit = seen.Noted($"{seen.Notes} {editor}{mark}", FormattableString.Invariant($"{editor}{mark}-{++tries}"));
                var result = await store.AppendAsync("small", version, edit, editor, Token);
                (seen, version) = result switch
                {
                    Appended done => (done.Job, done.Version),
                    AppendConflict other => (other.Current.Job, other.Current.Version),
                    _ => throw new InvalidOperationException(result.ToString()),
                };
                mark += result is Appended ? 1 : 0;
            }
        }
    }
}
