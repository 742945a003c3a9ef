namespace Estimator.Data.Revisions;

/// <summary>A quantity of a catalogue item.</summary>
internal sealed class TakeoffLineRow : RevisionLineRow
{
    public required string Item { get; set; }

    public required string Category { get; set; }

    public required string Description { get; set; }

    /// <summary>each or foot.</summary>
    public required string Unit { get; set; }

    public long QuantityE4 { get; set; }

    public bool OwnerSupplied { get; set; }
}
