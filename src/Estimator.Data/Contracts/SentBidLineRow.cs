using Estimator.Data.Databases;

namespace Estimator.Data.Contracts;

/// <summary>A line of the schedule of values of a bid that was sent.</summary>
internal sealed class SentBidLineRow : OwnedRow
{
    public string JobId { get; set; } = "";

    public int Revision { get; set; }

    public int Line { get; set; }

    public required string LineId { get; set; }

    public required string Title { get; set; }

    public long ValueE4 { get; set; }
}
