using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.Framing;
using Estimator.Engine.Wiring.Joints;

namespace Estimator.Engine.Wiring.Boxes;

/// <summary>A box with its contents.</summary>
public sealed record Box
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>Index of its circuit.</summary>
    public required int Circuit { get; init; }

    /// <summary>Where.</summary>
    public required Placement Place { get; init; }

    /// <summary>Indexes of the devices in or on it; empty for equipment.</summary>
    public required ImmutableArray<int> Devices { get; init; }

    /// <summary>Index of the equipment it serves; -1 for devices.</summary>
    public required int Equipment { get; init; }

    /// <summary>What is asked of the box: wall, ceiling, fan, weatherproof, or none where the luminaire brings its own.</summary>
    public required BoxUse Use { get; init; }

    /// <summary>Whether it is cut into a finished wall.</summary>
    public required bool OldWork { get; init; }

    /// <summary>Gangs.</summary>
    public required int Gangs { get; init; }

    /// <summary>The catalogue item; null where the luminaire brings its own, or nothing fits.</summary>
    public required BoxItem? Item { get; init; }

    /// <summary>Volume that the contents ask for.</summary>
    public required Fact RequiredVolume { get; init; }

    /// <summary>Whether the contents fit; true where the luminaire brings its own.</summary>
    public required bool Fits { get; init; }

    /// <summary>Whether its duplex receptacle is exchanged for one with ground-fault protection built in.</summary>
    public required bool OwnGroundFault { get; init; }

    /// <summary>Cables that enter.</summary>
    public required int CableEntries { get; init; }

    /// <summary>What is joined to what in it: every conductor that enters, every screw and lead.</summary>
    public required ImmutableArray<Joint> Joints { get; init; }
}
