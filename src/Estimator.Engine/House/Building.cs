using Estimator.Engine.Measures;

namespace Estimator.Engine.House;

/// <summary>A building that stands apart from the house: a garage, a shed, a guest house. Its rooms name it.</summary>
public sealed record Building
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>What people call it.</summary>
    public string Name { get; init; } = "";

    /// <summary>Length of the trench from the house; null measures it straight on the plan, from wall to wall.</summary>
    public Length? Trench { get; init; }

    /// <summary>Whether the trench passes under a driveway or a place for cars.</summary>
    public bool UnderDriveway { get; init; }

    /// <summary>What lies in the trench, cable or conduit for it; null is UF cable for a circuit and conduit for the feeder of a panel.</summary>
    public WiringMethod? Buried { get; init; }

    /// <summary>Whether its feeder has a disconnect on its outside.</summary>
    public bool DisconnectOutdoors { get; init; }
}
