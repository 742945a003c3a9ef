using Estimator.Data.Databases;

namespace Estimator.Data.Contracts;

/// <summary>Something that happened to a revision as a bid. Never changed.</summary>
internal sealed class BidEventRow : OwnedRow
{
    public required string JobId { get; set; }

    public int Revision { get; set; }

    public int Sequence { get; set; }

    public required string Kind { get; set; }

    public DateOnly On { get; set; }

    public required string To { get; set; }

    public required string Text { get; set; }

    public required string Who { get; set; }

    public long AtUtcTicks { get; set; }
}
