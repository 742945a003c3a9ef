using Estimator.Engine.Measures;

namespace Estimator.Data.Jobs;

/// <summary>A job in a list.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="State">Where it stands.</param>
/// <param name="Archived">Whether it is in the archive.</param>
/// <param name="Version">Sequence of its last edit.</param>
/// <param name="Created">When it was made, UTC.</param>
/// <param name="Changed">When it was last edited, UTC.</param>
/// <param name="ChangedBy">Who edited it last.</param>
/// <param name="LastRevision">Number of its last saved revision; null where none was saved.</param>
/// <param name="LastPrice">Price of that revision.</param>
public sealed record JobSummary(
    string Id, string Name, JobState State, bool Archived, int Version, DateTimeOffset Created, DateTimeOffset Changed, string ChangedBy, int? LastRevision, Money? LastPrice);
