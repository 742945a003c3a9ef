using Estimator.Data.Databases;

namespace Estimator.Data.Suppliers;

/// <summary>A supplier of the company.</summary>
internal sealed class SupplierRow : VersionedRow
{
    public int Id { get; set; }

    public required string Name { get; set; }

    public string Account { get; set; } = "";

    public string Contact { get; set; } = "";

    public string Note { get; set; } = "";

    public string Way { get; set; } = "";

    public long DeliveryE4 { get; set; }

    public long MinimumE4 { get; set; }

    public long? FreeFromE4 { get; set; }

    public bool Active { get; set; }

    /// <summary>Heading by what it says, as a JSON object.</summary>
    public string MatchingJson { get; set; } = "{}";
}
