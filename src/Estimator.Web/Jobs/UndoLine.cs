using Estimator.Engine.Edits;

namespace Estimator.Web.Jobs;

/// <summary>What can be undone and redone, read from the log itself, so that a reload or another tab knows it too.</summary>
/// <remarks>An undo is an edit whose id names the one that it took back; so is a redo.</remarks>
public sealed class UndoLine
{
    private const string UndoWord = "undo";
    private const string RedoWord = "redo";
    private readonly List<JobEdit> _done = [];
    private readonly List<JobEdit> _undone = [];

    /// <summary>The edit that undo would take back; null when there is none.</summary>
    public JobEdit? Last => _done.Count > 0 ? _done[^1] : null;

    /// <summary>The edit that redo would make again; null when there is none.</summary>
    public JobEdit? Next => _undone.Count > 0 ? _undone[^1] : null;

    /// <summary>Takes in the next edit of the log.</summary>
    public void Read(JobEdit edit)
    {
        if (Named(edit.Id, UndoWord) is { } taken)
        {
            Move(_done, _undone, taken);
        }
        else if (Named(edit.Id, RedoWord) is { } again)
        {
            Move(_undone, _done, again);
        }
        else
        {
            _done.Add(edit);
            _undone.Clear();
        }
    }

    /// <summary>Forgets everything.</summary>
    public void Clear()
    {
        _done.Clear();
        _undone.Clear();
    }

    /// <summary>The edit that takes another back.</summary>
    public static JobEdit Undo(JobEdit edit) => JobEditing.Inverse(edit) with { Id = $"{UndoWord}:{Guid.NewGuid():N}:{edit.Id}", Title = $"Undo: {edit.Title}" };

    /// <summary>The edit that makes another again.</summary>
    public static JobEdit Redo(JobEdit edit) => edit with { Id = $"{RedoWord}:{Guid.NewGuid():N}:{edit.Id}", Title = $"Redo: {edit.Title}" };

    private static string? Named(string id, string word) => id.Split(':', 3) is [var first, _, var named] && first == word ? named : null;

    private static void Move(List<JobEdit> from, List<JobEdit> to, string id)
    {
        var at = from.FindLastIndex(e => e.Id == id);
        if (at >= 0)
        {
            to.Add(from[at]);
            from.RemoveAt(at);
        }
    }
}
