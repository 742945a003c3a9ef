using Estimator.Engine.Edits;

namespace Estimator.Data.Jobs;

/// <summary>An edit in the log.</summary>
/// <param name="Sequence">1 for the job's first edit.</param>
/// <param name="Edit">The edit.</param>
/// <param name="Who">Who made it.</param>
/// <param name="At">When it was stored, UTC.</param>
public sealed record LoggedEdit(int Sequence, JobEdit Edit, string Who, DateTimeOffset At);
