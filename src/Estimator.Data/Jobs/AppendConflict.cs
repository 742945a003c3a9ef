using System.Collections.Immutable;
using Estimator.Engine.Edits;

namespace Estimator.Data.Jobs;

/// <summary>Nothing was stored, since somebody else changed the same thing to something else. Both sides are here, for the user to choose.</summary>
/// <param name="Conflicts">What both touched, with both sides.</param>
/// <param name="Theirs">Edits that others stored since the base.</param>
/// <param name="Current">The job as it stands.</param>
public sealed record AppendConflict(ImmutableArray<EditConflict> Conflicts, ImmutableArray<LoggedEdit> Theirs, StoredJob Current) : AppendResult;
