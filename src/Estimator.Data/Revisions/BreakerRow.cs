namespace Estimator.Data.Revisions;

/// <summary>Breakers of a kind in a panel.</summary>
internal sealed class BreakerRow : RevisionLineRow
{
    public required string Panel { get; set; }

    public int RatingA { get; set; }

    public int Poles { get; set; }

    public required string Protection { get; set; }

    public int Breakers { get; set; }
}
