using System.Collections.Immutable;
using Estimator.Data.Jobs;
using Estimator.Engine.Edits;
using Estimator.Engine.House;

namespace Estimator.Web.Jobs;

/// <summary>An edit that was not stored because somebody else changed the same thing. The user chooses.</summary>
/// <param name="Title">What was to be done.</param>
/// <param name="Conflicts">Both sides of each thing.</param>
/// <param name="Theirs">The edits of the others.</param>
/// <param name="Mine">Makes the edit again on the job as it stands.</param>
public sealed record EditClash(string Title, ImmutableArray<EditConflict> Conflicts, ImmutableArray<LoggedEdit> Theirs, Func<Job, Job> Mine);
