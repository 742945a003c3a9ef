using Estimator.Data.Databases;

namespace Estimator.Data.Actuals;

/// <summary>What was decided on a proposal. Only its end is ever changed.</summary>
internal sealed class OwnUnitRow : VersionedRow
{
    public int Id { get; set; }

    public required string Kind { get; set; }

    public required string Key { get; set; }

    public long FactorE4 { get; set; }

    public long LowE4 { get; set; }

    public long HighE4 { get; set; }

    public bool Accepted { get; set; }

    public List<string> Jobs { get; set; } = [];

    public required string Who { get; set; }

    public long AtUtcTicks { get; set; }

    public string EndedBy { get; set; } = "";

    public long? EndedUtcTicks { get; set; }
}
