using Estimator.Data.Databases;

namespace Estimator.Data.Actuals;

/// <summary>Hours that were worked on a day.</summary>
internal sealed class ActualHoursRow : OwnedRow
{
    public required string JobId { get; set; }

    public int Id { get; set; }

    public DateOnly Day { get; set; }

    public required string Phase { get; set; }

    public long HoursE4 { get; set; }

    public required string Note { get; set; }
}
