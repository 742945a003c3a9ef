using System.Collections.Immutable;
using Estimator.Data.Jobs;

namespace Estimator.Web.Jobs;

/// <summary>What the states of a job are called.</summary>
public static class JobStateWords
{
    /// <summary>All of them, in the order in which a job goes through them.</summary>
    public static ImmutableArray<(JobState State, string Words)> All { get; } =
        [(JobState.Draft, "Estimating"), (JobState.Sent, "Bid sent"), (JobState.Won, "Won"), (JobState.Lost, "Lost"), (JobState.Finished, "Finished")];

    /// <summary>What a state is called.</summary>
    public static string Of(JobState state) => All.First(s => s.State == state).Words;
}
