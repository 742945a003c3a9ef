namespace Estimator.Data.Revisions;

/// <summary>Boxes of a kind.</summary>
internal sealed class BoxRow : RevisionLineRow
{
    /// <summary>The catalogue item; null where nothing in the catalogue fits, or the luminaire brings its own.</summary>
    public string? Item { get; set; }

    public required string Use { get; set; }

    public int Gangs { get; set; }

    public bool OldWork { get; set; }

    public int Boxes { get; set; }
}
