using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>Work on the service: a new one, or one that takes an old one's place. What is left out follows the edition and the table of service parts.</summary>
public sealed record ServiceWork
{
    /// <summary>Rating, in amperes; null takes that of the service panel.</summary>
    public Current? RatingA { get; init; }

    /// <summary>How the utility's conductors arrive.</summary>
    public ServiceEntrance Entrance { get; init; } = ServiceEntrance.Overhead;

    /// <summary>Metal of the service conductors.</summary>
    public ConductorMetal Metal { get; init; } = ConductorMetal.Aluminium;

    /// <summary>Service conductors from where the utility's end to the meter and on to the disconnect; null is the usual length.</summary>
    public Length? ConductorLength { get; init; }

    /// <summary>Trench of an underground service that is dug in this job; null where the utility or another trade digs it.</summary>
    public Length? Trench { get; init; }

    /// <summary>Where the house is cut off; null follows the edition.</summary>
    public ServiceDisconnect? Disconnect { get; init; }

    /// <summary>Conductors from an outdoor disconnect to the service panel; null is the usual length.</summary>
    public Length? DisconnectToPanel { get; init; }

    /// <summary>Ground rods; null is the usual number, none beside a concrete-encased electrode.</summary>
    public int? GroundRods { get; init; }

    /// <summary>Whether a concrete-encased electrode is there to be used.</summary>
    public bool ConcreteEncased { get; init; }

    /// <summary>Whether a metal water pipe is there to be bonded.</summary>
    public bool WaterPipe { get; init; }

    /// <summary>Whether an old service is taken down.</summary>
    public bool Replaces { get; init; }

    /// <summary>Whether the site needs power before the service is ready.</summary>
    public bool TemporaryPower { get; init; }

    /// <summary>Days on the calendar of waiting for the utility; null is the usual wait. They are no hours.</summary>
    public int? UtilityWaitDays { get; init; }
}
