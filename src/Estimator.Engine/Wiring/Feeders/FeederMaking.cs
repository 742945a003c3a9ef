using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Feeders;

/// <summary>Sizes the feeder of each new panel by its breaker and measures its cable from panel to panel.</summary>
/// <remarks>
/// Table 310.12 is for conductors that carry the whole dwelling, so a part-house feeder takes table 310.16: copper at 60 C to 100 A, 110.14(C) and 334.80,
/// beyond that aluminium service-entrance cable at 75 C, 338.10(B)(4); in a raceway copper, beyond 100 A at 75 C. The next standard breaker above the ampacity is allowed, 240.4(B).
/// Grounding conductor by 250.122.
/// </remarks>
internal sealed class FeederMaking(HouseLayout layout, FramingMap map, WayCosts costs)
{
    /// <summary>Number of the page of the explanation book.</summary>
    internal const int PageNumber = 9;

    private readonly PageWriter _page = new(PageNumber);
    private readonly List<Finding> _findings = [];

    internal FeederPlan Make()
    {
        List<Feeder> feeders = [];
        for (var p = 0; p < layout.Panels.Length; p++)
        {
            if (layout.Panels[p].Source is { FedFrom: { } from, Existing: false } && IndexOf(from) is var f and >= 0 && Of(f, p) is { } feeder)
            {
                feeders.Add(feeder);
            }
        }

        return new FeederPlan([.. feeders], [.. _findings], _page.ToPage());
    }

    private int IndexOf(string panel) => layout.Panels.ToList().FindIndex(x => x.Source.Id == panel);

    private Feeder? Of(int from, int to)
    {
        var panel = layout.Panels[to].Source;
        var rating = panel.RatingA.ToAmperes();
        var (way, _) = costs.Best(costs.PanelNode(from), costs.PanelNode(to), FeedCable.Reference);
        var method = way is RunWay.Underground ? InGround(from, to, rating) : RunMethods.Between(layout.House.Job, [RoomOf(from), RoomOf(to)]);
        var pulled = RunMethods.Raceway(method) is not null;
        var branch = rating <= FeederRules.CopperTo.Number();
        var metal = branch || pulled ? ConductorMetal.Copper : ConductorMetal.Aluminium;
        var column = branch ? "nm_b_ampacity_cu_334_80" : pulled ? "ampacity_cu_75C" : "ampacity_al_75C";
        // StandardBreakers.AtLeast answers its last row for what lies beyond the table, so the ampacity itself must be enough there.
        var row = Conductors.All.Where(r => r.Has(column) && (!branch || pulled || r.Key != FeederRules.NotSold.Text())).FirstOrDefault(r => r.Number(column) >= rating || (r.Number(column) < StandardBreakers.Largest && StandardBreakers.AtLeast(r.Number(column)).Number() >= rating));
        if (row is null || ServiceConductors.Grounding(rating) is not { } grounding)
        {
            _findings.Add(TooLarge(panel, rating));
            return null;
        }

        var wire = WireSize.Parse(row.Key).Value;
        var path = map.PathFor(layout.Panels[from].Place, layout.Panels[to].Place, way, _page);
        var cable = new CableType(method, wire, (int)FeederRules.Conductors.Number());
        return new Feeder
        {
            Id = $"{panel.Id}/feeder",
            From = layout.Panels[from].Source.Id,
            To = panel.Id,
            BreakerA = _page.Given($"$.panels[{layout.House.Job.Panels.Select(p => p.Id).ToList().IndexOf(panel.Id)}].rating_a", "Rating of the fed panel", rating, Unit.Amperes),
            Wire = wire,
            Ground = WireSize.Parse(grounding.Text(metal is ConductorMetal.Copper ? "copper" : "aluminium")).Value,
            Metal = metal,
            AmpacityA = row.Read(_page, Unit.Amperes, column),
            Method = branch || pulled ? method : WiringMethod.NmB,
            ItemId = pulled ? $"thhn-{Word(wire)}" : branch ? cable.ItemId : $"ser-al-{Word(wire)}-{cable.Conductors}",
            CableName = pulled ? $"{cable.Conductors} × {wire} and ground in {(method is WiringMethod.Emt ? "EMT" : "PVC conduit")}" : branch ? cable.TradeName : $"aluminium SER {wire}/{cable.Conductors}",
            Path = path,
            Total = Total(path),
            Fished = IsFinished(from) || IsFinished(to),
        };
    }

    // Service-entrance cable is not for the ground, 338.10(B)(4): what is too large for branch cable goes into conduit.
    private WiringMethod InGround(int from, int to, decimal rating) =>
        rating > FeederRules.CopperTo.Number() ? WiringMethod.BuriedConduit : RunMethods.InGround(layout.House.Job, RoomOf(from), RoomOf(to));

    private Fact Total(RunPath path)
    {
        var job = layout.House.Job;
        var through = _page.Compute(Operation.Sum, "run-path", "Path through the framing", Unit.Length, path.Horizontal, path.Vertical);
        var makeUp = _page.Compute(Operation.Sum, "run-make-up", "Cable left at both panels", Unit.Length, Tails.AtPanel(job, _page), Tails.AtPanel(job, _page));
        return _page.Compute(Operation.Sum, "run-total", "Piece to cut", Unit.Length, through, makeUp, _page.Compute(Operation.PercentOf, "run-slack", "Slack on the path", Unit.Length, through, RunMaking.Slack(job, _page)));
    }

    private Room RoomOf(int panel) => layout.House.Rooms[layout.Panels[panel].Place.Room].Source;

    private bool IsFinished(int panel) => RoomOf(panel).Walls is WallState.Finished;

    private static string Word(WireSize size) => size.ToString().Replace('/', '_');

    private static Finding TooLarge(Panel panel, decimal rating) => new()
    {
        Code = "feeder-too-large",
        Severity = Severity.Advice,
        Where = [panel.Id],
        Text = FormattableString.Invariant($"No cable of the tables carries the feeder of {rating:0} A to panel {panel.Called()}: size it and price it apart."),
    };
}
