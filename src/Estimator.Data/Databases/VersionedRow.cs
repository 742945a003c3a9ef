namespace Estimator.Data.Databases;

/// <summary>A row that two people may change: its version is raised with each change and checked when it is written.</summary>
internal abstract class VersionedRow : OwnedRow
{
    public int Version { get; set; }
}
