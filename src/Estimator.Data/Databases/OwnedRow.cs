namespace Estimator.Data.Databases;

/// <summary>A row; each belongs to a company.</summary>
internal abstract class OwnedRow
{
    public long CompanyId { get; set; }
}
