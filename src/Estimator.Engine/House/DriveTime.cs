namespace Estimator.Engine.House;

/// <summary>Driving, where it is counted as hours (<see cref="TravelBy.Hours"/>); read nowhere else.</summary>
public sealed record DriveTime
{
    /// <summary>Hours that each hand drives on a day, both ways; null follows the bid table.</summary>
    public decimal? HoursATrip { get; init; }

    /// <summary>Trips to the site; null is one for each day of the crew that is begun.</summary>
    public int? Trips { get; init; }
}
