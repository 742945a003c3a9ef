using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Wiring.Routing;

/// <summary>The job's planning costs as whole ten-thousandths of a dollar, ready for the search.</summary>
internal sealed class PlanningPrices
{
    private const int SixteenthsPerFoot = 192;

    private readonly Dictionary<(WireSize, int), long> _cable = [];
    private readonly decimal _cableScale;
    private readonly decimal _breakerScale;
    private readonly PlanningCosts _costs;

    internal PlanningPrices(PlanningCosts costs)
    {
        _costs = costs;
        _cableScale = Scale(costs.CablePerFoot, PlanningCostDefaults.CablePerFoot(WireSize.Awg14, 2));
        _breakerScale = Scale(costs.Breaker, PlanningCostDefaults.Breaker(1, Protection.Plain));
        BoreE4 = E4(costs.Bore?.ToDollars() ?? PlanningCostDefaults.Bore.Number());
        PanelEntryE4 = E4(PlanningCostDefaults.PanelEntry.Number());
        RoomE4 = E4(WiringSettings.RoomOnCircuit.Number());
        GroundFaultReceptacleE4 = E4(PlanningCostDefaults.GroundFaultReceptacle.Number());
        FishPerFootE4 = E4(PlanningCostDefaults.FishPerFoot.Number());
    }

    internal long BoreE4 { get; }

    internal long PanelEntryE4 { get; }

    internal long RoomE4 { get; }

    internal long GroundFaultReceptacleE4 { get; }

    private long FishPerFootE4 { get; }

    internal long CableE4(CableType cable, int sixteenths)
    {
        if (!_cable.TryGetValue((cable.Size, cable.Conductors), out var perFoot))
        {
            var hour = _costs.Hour?.ToDollars() ?? PlanningCostDefaults.Hour.Number();
            perFoot = E4(PlanningCostDefaults.CablePerFoot(cable.Size, cable.Conductors).Number() * _cableScale
                + PlanningCostDefaults.PullHoursPerFoot.Number() * hour);
            _cable.Add((cable.Size, cable.Conductors), perFoot);
        }

        return sixteenths * perFoot / SixteenthsPerFoot;
    }

    internal long FishE4(int sixteenths) => sixteenths * FishPerFootE4 / SixteenthsPerFoot;

    internal long BreakerE4(int poles, Protection protection) => E4(PlanningCostDefaults.Breaker(poles, protection).Number() * _breakerScale);

    internal long BoxE4(int gangs) => E4((_costs.Box?.ToDollars() ?? PlanningCostDefaults.Box(1).Number())
        * PlanningCostDefaults.Box(gangs).Number() / PlanningCostDefaults.Box(1).Number());

    private static decimal Scale(Money? own, RuleRow row) => own is { } money ? money.ToDollars() / row.Number() : 1m;

    private static long E4(decimal dollars) => decimal.ToInt64(decimal.Round(dollars * 10_000m, 0, MidpointRounding.AwayFromZero));
}
