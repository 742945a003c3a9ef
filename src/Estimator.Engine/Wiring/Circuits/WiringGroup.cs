using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Panels;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Units that compete for the same circuits. A group's result is a function of its content alone.</summary>
/// <param name="Panel">Index of the panel.</param>
/// <param name="Kind">Kind of circuit.</param>
/// <param name="Zone">Zone of the house; -1 where the whole house is one.</param>
/// <param name="Units">The boxes of each unit.</param>
/// <param name="Pinned">The pinned circuit that it is; null for a free group.</param>
internal sealed record WiringGroup(
    int Panel, CircuitKind Kind, int Zone, ImmutableArray<ImmutableArray<int>> Units, PinnedCircuit? Pinned)
{
    /// <summary>The pinned circuit that shares the first one's home run and neutral; null where it stands alone.</summary>
    internal PinnedCircuit? Joining { get; init; }

    /// <summary>How many of the units, the first ones, are on the circuit that has the home run, where another joins it.</summary>
    internal int Carried { get; init; }

    /// <summary>The pinned circuits that the group is.</summary>
    internal IEnumerable<PinnedCircuit> Pins => new[] { Pinned, Joining }.OfType<PinnedCircuit>();
}
