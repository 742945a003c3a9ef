using System.Collections.Immutable;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Wiring.Joints;

/// <summary>Conductors of a box that are joined, with the screws and leads that they serve.</summary>
/// <param name="Function">What the conductors are.</param>
/// <param name="Size">Their size.</param>
/// <param name="Ends">Conductors that enter the box.</param>
/// <param name="Terminals">Screws and leads.</param>
/// <param name="Connector">Whether a connector joins them, a pigtail going to each screw; else each conductor goes straight to a screw. A lone end under a connector is capped.</param>
public sealed record Joint(
    ConductorFunction Function, WireSize Size, ImmutableArray<ConductorEnd> Ends, ImmutableArray<Terminal> Terminals, bool Connector)
{
    /// <summary>Conductors under the connector, pigtails and leads counted.</summary>
    public int Conductors => Ends.Length + Terminals.Length;

    /// <summary>Pigtails cut for screws.</summary>
    public int Pigtails => Connector ? Terminals.Count(t => !t.Lead) : 0;
}
