using System.Collections.Immutable;
using Estimator.Engine.Wiring.Joints;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Boxes that must stand on one circuit: a box alone, or all boxes that a set of controls or an alarm interconnect ties together, wired in one way.</summary>
internal sealed record WiringUnit
{
    /// <summary>Its boxes.</summary>
    internal required ImmutableArray<int> Boxes { get; init; }

    /// <summary>The box that the feed enters.</summary>
    internal required int Entry { get; init; }

    /// <summary>Boxes from which the feed may go on.</summary>
    internal required ImmutableArray<FeedExit> Exits { get; init; }

    /// <summary>The cables inside it.</summary>
    internal required ImmutableArray<CableLeg> Legs { get; init; }

    /// <summary>Planning cost of those cables, in ten-thousandths of a dollar.</summary>
    internal required long InnerE4 { get; init; }

    /// <summary>What the devices of each box connect to.</summary>
    internal required ImmutableSortedDictionary<int, ImmutableArray<Terminal>> Terminals { get; init; }

    /// <summary>By control, the box where the neutral that goes along with its travellers leaves the common one.</summary>
    internal ImmutableSortedDictionary<int, int> NeutralOrigins { get; init; } = ImmutableSortedDictionary<int, int>.Empty;

    /// <summary>Outlets in it.</summary>
    internal required int Outlets { get; init; }

    /// <summary>Load that the plan counts on it, in volt-amperes.</summary>
    internal required int LoadVa { get; init; }

    /// <summary>Rooms that it stands in.</summary>
    internal required ImmutableArray<int> Rooms { get; init; }
}
