namespace Estimator.Data.Revisions;

/// <summary>Cable of a type: whole runs, make-up and slack in them.</summary>
internal sealed class CableRow : RevisionLineRow
{
    public required string Item { get; set; }

    public required string Method { get; set; }

    /// <summary>Wire size: 14, 12, 4/0.</summary>
    public required string Size { get; set; }

    /// <summary>Insulated conductors.</summary>
    public int Conductors { get; set; }

    public bool Fished { get; set; }

    public int Runs { get; set; }

    public long LengthNm { get; set; }
}
