using Estimator.Engine.House;
using Estimator.Engine.JobFiles;

namespace Estimator.Engine.Edits;

/// <summary>Makes edits on jobs, turns them round, and finds the edit between two jobs.</summary>
public static class JobEditing
{
    /// <summary>The job after an edit, checked as a job file is; or problems, and then nothing of the edit is made.</summary>
    /// <remarks>A field is only set where it still holds what the edit found there, or holds the new value already.</remarks>
    public static EditedJob Apply(Job job, JobEdit edit)
    {
        if ((TooLong("$.id", edit.Id) ?? TooLong("$.title", edit.Title)) is { } unreadable)
        {
            return EditedJob.Refused(unreadable);
        }

        var tree = JobTree.Of(job);
        foreach (var change in edit.Changes)
        {
            if (ChangeMaking.Make(tree, change) is { } problem)
            {
                return EditedJob.Refused(problem);
            }
        }

        return tree.Read(out var edited) is { } unread ? EditedJob.Refused(unread) : EditedJob.Of(edited!, JobValidation.Problems(edited!, JobTree.File));
    }

    // What a log may hold it must also give back.
    private static JobProblem? TooLong(string path, string text) => text.Length <= JobLimits.Text
        ? null
        : new JobProblem(JobTree.File, path, FormattableString.Invariant($"text of {text.Length} characters"), FormattableString.Invariant($"text to {JobLimits.Text} characters"));

    /// <summary>The edit that undoes another made just before it. Id and title are those of the edit; the caller gives it its own with <c>with</c>.</summary>
    public static JobEdit Inverse(JobEdit edit) => edit with { Changes = [.. edit.Changes.Reverse().Select(c => c.Inverse())] };

    /// <summary>The edit that leads from one job to another; without changes where they are the same.</summary>
    /// <param name="before">The job as it was.</param>
    /// <param name="after">The job as it shall be.</param>
    /// <param name="id">Id of the edit.</param>
    /// <param name="title">What the user did, in plain words.</param>
    public static JobEdit Between(Job before, Job after, string id, string title) => new(id, title, ChangeFinding.Between(JobTree.Node(before), JobTree.Node(after)));
}
