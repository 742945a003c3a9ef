using Estimator.Data.Databases;

namespace Estimator.Data.Contracts;

/// <summary>What a bid offered when it was sent first: price, terms and schedule of values. Never changed.</summary>
internal sealed class SentBidRow : OwnedRow
{
    public required string JobId { get; set; }

    public int Revision { get; set; }

    public long DepositE4 { get; set; }

    public long RetainagePercentE4 { get; set; }

    public int DaysToPay { get; set; }

    public long LateChargePercentE4 { get; set; }

    public int ValidDays { get; set; }

    public List<SentBidLineRow>? Lines { get; set; }
}
