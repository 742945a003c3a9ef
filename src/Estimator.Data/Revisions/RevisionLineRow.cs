using Estimator.Data.Databases;

namespace Estimator.Data.Revisions;

/// <summary>A line of a saved revision. Rows are added with it and never changed, so that SQL can sum them over jobs.</summary>
internal abstract class RevisionLineRow : OwnedRow
{
    public string JobId { get; set; } = "";

    public int Revision { get; set; }

    /// <summary>Place of the line, from 1.</summary>
    public int Line { get; set; }
}
