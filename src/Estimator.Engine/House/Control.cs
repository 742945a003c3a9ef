using System.Collections.Immutable;

namespace Estimator.Engine.House;

/// <summary>Which switches act on which loads.</summary>
/// <remarks>
/// Devices are named by id: a placed device by its own, a counted one by room, kind and number, such as <c>R1/ceiling_light-1</c>.
/// The fan part of a ceiling fan is <c>ID#fan</c>, its light <c>ID#light</c>.
/// </remarks>
public sealed record Control
{
    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>Switches: one for a single place, two three-ways, further four-ways.</summary>
    public required ImmutableArray<string> Switches { get; init; }

    /// <summary>Loads that they turn on and off together.</summary>
    public required ImmutableArray<string> Loads { get; init; }
}
