using Estimator.Data.Databases;

namespace Estimator.Data.Revisions;

/// <summary>A catalogue that a revision was priced with, kept once for all revisions that share it.</summary>
internal sealed class CatalogueRow : OwnedRow
{
    public required string Hash { get; set; }

    /// <summary>File name to CSV text, as a JSON object.</summary>
    public required string FilesJson { get; set; }
}
