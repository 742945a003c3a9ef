using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;

namespace Estimator.Engine.Framing;

/// <summary>A way through the framing with its turns and its explained lengths.</summary>
public sealed record RunPath
{
    /// <summary>How it goes.</summary>
    public required RunWay Way { get; init; }

    /// <summary>Its turns, from one end to the other.</summary>
    public required ImmutableArray<Waypoint> Turns { get; init; }

    /// <summary>Horizontal length.</summary>
    public required Fact Horizontal { get; init; }

    /// <summary>Rises and drops together.</summary>
    public required Fact Vertical { get; init; }

    /// <summary>The part of the horizontal length that lies along members and is stapled to them.</summary>
    public required Fact AlongMembers { get; init; }

    /// <summary>Holes to bore.</summary>
    public required Fact Bores { get; init; }

    /// <summary>The part of the horizontal length that lies in a trench; null where none does.</summary>
    public Fact? Trench { get; init; }

    /// <summary>Whether no way through the framing was found and the distance was measured straight across.</summary>
    public required bool Bridged { get; init; }
}
