using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.Web.Explanations;
using Estimator.Web.Frame;

namespace Estimator.Web.Entries;

/// <summary>A part of a page in which things are stated: an edit that the job refuses is answered where it was typed, and changes nothing.</summary>
public abstract class StatingPart : DeskPart
{
    private const int Shown = 240;

    /// <summary>Makes an edit.</summary>
    /// <returns>What is wrong with it; null when it was made.</returns>
    protected async Task<string?> MakeAsync(string title, Func<Job, Job> change)
    {
        var before = Desk.Job;
        if (await Desk.EditAsync(title, change, Gone))
        {
            return null;
        }

        if (Desk.Problems is not [var problem, ..])
        {
            return "The same thing was changed elsewhere meanwhile; both sides stand at the head of the page.";
        }

        Desk.DismissProblems();
        return Sentence(before, problem, JobEditing.Between(before, change(before), "refused", title));
    }

    /// <summary>Makes an edit with what was typed, if that was understood.</summary>
    protected Task<string?> MakeAsync<T>(Parsed<T> typed, string title, Func<Job, T, Job> change) =>
        typed.Ok ? MakeAsync(title, job => change(job, typed.Value)) : Task.FromResult<string?>(typed.Problem);

    // Where the job refuses because of another place than the field, the place is named.
    private static string Sentence(Job job, JobProblem problem, JobEdit edit)
    {
        var here = edit.Changes.Any(c => c is not SetField set || problem.Path.Contains(set.Field, StringComparison.Ordinal));
        var found = problem.Found.Length > Shown ? problem.Found[..Shown] + "…" : problem.Found;
        return $"{(here ? "Found" : $"{StatedPlace.Words(job, problem.Path)}: found")} {found}; accepted is {problem.Accepted}.";
    }
}
