using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>The general circuits carry the lighting load of the floor area that they serve.</summary>
/// <remarks>Counted over the finished rooms in which the job wires something. Source: NEC 210.11(A), with no demand factor.</remarks>
internal static class GeneralCircuits
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        var general = context.Wiring.Circuits.Where(c => c.Kind is CircuitKind.Lighting or CircuitKind.Receptacles or CircuitKind.General).ToList();
        if (general.Count == 0 || context.Rule("general-circuits") is not { } rule)
        {
            return [];
        }

        var area = context.House.Rooms.Where(r => r.Source.Finished && context.In(r.Index).Any()
            && r.Source.Kind is not (RoomKind.Garage or RoomKind.Outdoors or RoomKind.Attic or RoomKind.Crawl or RoomKind.Void)).Sum(r => r.AreaSquareFeet.Value);
        var load = area * LoadRules.UnitLoadForCircuits.Number();
        var carries = general.Sum(c => c.BreakerA.Value) * CircuitRatings.Volts.Number();
        return context.Ask(
            rule, carries >= load,
            () => $"{area:0} sq ft of rooms count as {load:0} VA of lights and receptacles, and the {general.Count} general circuits carry {carries:0} VA. Lower the outlets on a circuit until there are enough.", [.. general.Select(c => c.Id)]);
    }
}
