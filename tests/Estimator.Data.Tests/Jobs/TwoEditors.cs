using Estimator.Data.Jobs;
using Estimator.Engine.House;
using static Estimator.Data.Tests.Jobs.Editing;

namespace Estimator.Data.Tests.Jobs;

/// <summary>Two editors who edit one job in a random order, each from what it saw last, and a model of the job beside them.</summary>
/// <remarks>The model knows nothing of edits: a field and its value, who set it last, and what each editor had seen. Every value is set once only.</remarks>
internal sealed class TwoEditors(JobStore store, StoredJob start, Random random)
{
    private static readonly string[] Fields = ["name", "notes", "origin", "room", "make"];

    private readonly List<(string Field, string Value, int Base, string Id)> _log = [];
    private readonly Dictionary<string, string?> _model = Fields.ToDictionary(f => f, f => Get(start.Job, f));
    private readonly (Job Job, int Version)[] _seen = [(start.Job, 0), (start.Job, 0)];

    internal int Stored => _log.Count;

    internal int Conflicts { get; private set; }

    internal int Merges { get; private set; }

    internal async Task PlayAsync(int steps)
    {
        for (var step = 1; step <= steps; step++)
        {
            var editor = random.Next(2);
            if (random.Next(5) == 0)
            {
                var fresh = (await store.LoadAsync(start.Job.Id))!;
                _seen[editor] = (fresh.Job, fresh.Version);
            }
            else
            {
                await EditAsync(editor, Fields[random.Next(Fields.Length)], FormattableString.Invariant($"value {step} of {editor}"), FormattableString.Invariant($"e{step}"));
            }
        }
    }

    /// <summary>The stored job is the model; the log holds what was acknowledged; nobody wrote over a value that it had not seen.</summary>
    internal async Task JudgeAsync()
    {
        var stored = (await store.LoadAsync(start.Job.Id))!;
        Assert.All(Fields, f => Assert.Equal(_model[f], Get(stored.Job, f)));
        Assert.Equal(_log.Select(e => e.Id), (await store.HistoryAsync(start.Job.Id)).Select(e => e.Edit.Id));
        Assert.All(_log.Select((edit, i) => (edit, i)), later => Assert.DoesNotContain(
            _log.Take(later.i).Skip(later.edit.Base), unseen => unseen.Field == later.edit.Field));
    }

    private async Task EditAsync(int editor, string field, string value, string id)
    {
        var (job, version) = _seen[editor];
        var unseen = _log.Skip(version).ToList();
        var result = await store.AppendAsync(start.Job.Id, version, job.To(Set(job, field, value), id), Who);
        if (unseen.Any(e => e.Field == field))
        {
            var conflict = Assert.IsType<AppendConflict>(result);
            Assert.Contains($"\"{value}\"", conflict.Conflicts.Select(c => c.Mine));
            Assert.Contains($"\"{_model[field]}\"", conflict.Conflicts.Select(c => c.Theirs));
            _seen[editor] = (conflict.Current.Job, conflict.Current.Version);
            Conflicts++;
            return;
        }

        var appended = Assert.IsType<Appended>(result);
        _log.Add((field, value, version, id));
        _model[field] = value;
        Assert.Equal(_log.Count, appended.Version);
        Assert.All(Fields, f => Assert.Equal(_model[f], Get(appended.Job, f)));
        _seen[editor] = (appended.Job, appended.Version);
        Merges += unseen.Count > 0 ? 1 : 0;
    }

    private static string? Get(Job job, string field) => field switch
    {
        "name" => job.Name,
        "notes" => job.Notes,
        "origin" => job.Origin,
        "room" => job.Levels[0].Rooms[0].Name,
        _ => job.Panels[0].Make,
    };

    private static Job Set(Job job, string field, string value) => field switch
    {
        "name" => job with { Name = value },
        "notes" => job with { Notes = value },
        "origin" => job with { Origin = value },
        "room" => job with { Levels = [job.Levels[0] with { Rooms = [job.Levels[0].Rooms[0] with { Name = value }] }] },
        _ => job with { Panels = [job.Panels[0] with { Make = value }] },
    };
}
