using System.Collections.Immutable;

namespace Estimator.Engine.Edits;

/// <summary>One act of a user on a job: small, immutable, with what was there before it. A job is a snapshot and the edits since.</summary>
/// <param name="Id">Stable id, made by the caller.</param>
/// <param name="Title">What the user did, in plain words: <c>Bedroom 2: ceiling height 9' 0"</c>.</param>
/// <param name="Changes">Its changes, made in this order, all or none.</param>
public sealed record JobEdit(string Id, string Title, ImmutableArray<JobChange> Changes)
{
    /// <summary>Whether it has the same id, title and changes.</summary>
    public bool Equals(JobEdit? other) => other is not null && Id == other.Id && Title == other.Title && Changes.SequenceEqual(other.Changes);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Id);
}
