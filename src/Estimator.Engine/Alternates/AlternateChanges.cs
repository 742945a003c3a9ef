using System.Collections.Immutable;
using Estimator.Engine.Edits;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Alternates;

/// <summary>Makes alternates of what is done to a job, and the job with them.</summary>
public static class AlternateChanges
{
    private static readonly ImmutableArray<string> NotInside = ["alternates", "alternate_packages", "id", "schema"];

    /// <summary>An alternate that does to the job what a function does; without changes where it does nothing.</summary>
    /// <param name="job">The job.</param>
    /// <param name="id">Id of the alternate.</param>
    /// <param name="name">What it is, as the customer reads it.</param>
    /// <param name="change">What it does.</param>
    public static Alternate Of(Job job, string id, string name, Func<Job, Job> change) =>
        new() { Id = id, Name = name, Changes = [.. JobEditing.Between(job, change(job), id, name).Changes.Select(EditJson.WriteChange)] };

    /// <summary>The job with alternates, in the order of the job; or why that can't be, and then nothing is made.</summary>
    /// <param name="job">The job.</param>
    /// <param name="ids">Ids of alternates of this job.</param>
    public static EditedJob Applied(Job job, IReadOnlyCollection<string> ids) => Chosen(job, ids) is { Ok: true } edit ? JobEditing.Apply(job, edit.Value) : EditedJob.Refused(Problem(job, ids));

    /// <summary>The edit that makes alternates part of the job and takes them off the list, so that their price is in its price.</summary>
    /// <param name="job">The job.</param>
    /// <param name="ids">Ids of alternates of this job.</param>
    public static EditedJob Taken(Job job, IReadOnlyCollection<string> ids)
    {
        var applied = Applied(job, ids);
        return !applied.Ok ? applied : EditedJob.Of(
            applied.Job with
            {
                Alternates = [.. applied.Job.Alternates.Where(a => !ids.Contains(a.Id))],
                AlternatePackages = [.. applied.Job.AlternatePackages.Select(p => p with { Alternates = [.. p.Alternates.Where(a => !ids.Contains(a))] }).Where(p => !p.Alternates.IsEmpty)],
            },
            []);
    }

    private static Parsed<JobEdit> Chosen(Job job, IReadOnlyCollection<string> ids)
    {
        var changes = job.Alternates.Where(a => ids.Contains(a.Id)).SelectMany(a => a.Changes).Select(EditJson.ReadChange).ToList();
        return changes.FirstOrDefault(c => !c.Ok || NotInside.Contains(c.Value.Touched.Steps[0])) is { } wrong
            ? Parsed<JobEdit>.Failure(wrong.Ok ? "an alternate within an alternate" : wrong.Problem)
            : Parsed<JobEdit>.Success(new JobEdit("alternate", "Alternate", [.. changes.Select(c => c.Value)]));
    }

    private static JobProblem Problem(Job job, IReadOnlyCollection<string> ids) => new("this job", "$.alternates", Chosen(job, ids).Problem ?? "", "changes of the house, its rates or its settings");
}
