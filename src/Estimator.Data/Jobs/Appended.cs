using System.Collections.Immutable;
using Estimator.Engine.House;

namespace Estimator.Data.Jobs;

/// <summary>The edit is in the log and outlives a kill of the program.</summary>
/// <param name="Job">The job with it and with what others did meanwhile.</param>
/// <param name="Version">Version of that job: the base of the next append.</param>
/// <param name="Theirs">Edits that others stored since the base, merged in.</param>
public sealed record Appended(Job Job, int Version, ImmutableArray<LoggedEdit> Theirs) : AppendResult;
