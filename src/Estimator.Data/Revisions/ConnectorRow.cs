namespace Estimator.Data.Revisions;

/// <summary>Wire connectors of a size.</summary>
internal sealed class ConnectorRow : RevisionLineRow
{
    public required string Item { get; set; }

    public required string Description { get; set; }

    public int Connectors { get; set; }
}
