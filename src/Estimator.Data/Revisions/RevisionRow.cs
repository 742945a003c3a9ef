using Estimator.Data.Contracts;
using Estimator.Data.Databases;

namespace Estimator.Data.Revisions;

/// <summary>A job as it was priced.</summary>
internal sealed class RevisionRow : OwnedRow
{
    public required string JobId { get; set; }

    /// <summary>1 for the job's first revision.</summary>
    public int Number { get; set; }

    /// <summary>Version of the job that was priced.</summary>
    public int JobVersion { get; set; }

    /// <summary>The engine and rules that priced it.</summary>
    public required string EngineHash { get; set; }

    public required string CatalogueHash { get; set; }

    public required string JobJson { get; set; }

    public required string Note { get; set; }

    public required string Who { get; set; }

    public long AtUtcTicks { get; set; }

    public long DirectCostE4 { get; set; }

    public long LowE4 { get; set; }

    public long LikelyE4 { get; set; }

    public long HighE4 { get; set; }

    public long HoursE4 { get; set; }

    public long OpeningsE4 { get; set; }

    public List<BidEventRow>? Events { get; set; }

    public SentBidRow? Sent { get; set; }

    public List<TakeoffLineRow>? TakeoffLines { get; set; }

    public List<CableRow>? Cables { get; set; }

    public List<BoxRow>? Boxes { get; set; }

    public List<BreakerRow>? Breakers { get; set; }

    public List<ConnectorRow>? Connectors { get; set; }

    public List<LaborRow>? Labor { get; set; }
}
