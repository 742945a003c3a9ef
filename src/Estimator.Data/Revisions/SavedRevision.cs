using System.Collections.Immutable;
using Estimator.Engine.House;

namespace Estimator.Data.Revisions;

/// <summary>A saved revision with all that its price was made from.</summary>
/// <param name="Summary">Its figures.</param>
/// <param name="Job">The job as it was priced.</param>
/// <param name="CatalogueFiles">The catalogue that it was priced with, file name to CSV text.</param>
public sealed record SavedRevision(RevisionSummary Summary, Job Job, ImmutableSortedDictionary<string, string> CatalogueFiles);
