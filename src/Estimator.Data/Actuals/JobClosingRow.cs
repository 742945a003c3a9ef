using Estimator.Data.Databases;

namespace Estimator.Data.Actuals;

/// <summary>A job that was closed.</summary>
internal sealed class JobClosingRow : OwnedRow
{
    public required string JobId { get; set; }

    public DateOnly ClosedOn { get; set; }

    public required string Who { get; set; }

    public List<JobOutcomeRow>? Outcomes { get; set; }
}
