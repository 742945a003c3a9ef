using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Circuits;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring;

/// <summary>A circuit of a group with its runs and boxes. Boxes are named by draft index; the assembly numbers them.</summary>
internal sealed record SolvedCircuit(
    DraftCircuit Draft, CircuitTree Tree, ImmutableArray<Run> Runs, ImmutableArray<Box> Boxes, Fact LoadVa, Fact DropPercent, WireSize Wire)
{
    /// <summary>Its planning cost, in ten-thousandths of a dollar.</summary>
    /// <remarks>
    /// The same sum whether a plan was found or pinned: each cable by its own kind, a panel entry for each cable that leaves the panel, the breaker, the
    /// receptacle that protects, the boxes, and a little for each room that the circuit enters.
    /// </remarks>
    internal long CostE4(Job job, WayCosts costs)
    {
        var total = Draft.BreakerPoles == 0 ? 0 : costs.Prices.BreakerE4(Draft.BreakerPoles, Draft.Protection);
        total += Draft.Units.SelectMany(u => u.Rooms).Distinct().Count() * costs.Prices.RoomE4;
        total += Boxes.Count(b => b.OwnGroundFault) * costs.Prices.GroundFaultReceptacleE4;
        total += Boxes.Sum(b => costs.Prices.BoxE4(b.Gangs));
        foreach (var leg in Tree.Legs)
        {
            total += costs.Best(leg.From, leg.To, FeedCable.Of(job, Wire, leg.Nets.Length)).CostE4;
            total += leg.Role is RunRole.HomeRun ? costs.Prices.PanelEntryE4 : 0;
        }

        return total;
    }
}
