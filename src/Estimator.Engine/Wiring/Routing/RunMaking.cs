using Estimator.Engine.Explanations;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Joints;

namespace Estimator.Engine.Wiring.Routing;

/// <summary>Turns a wanted cable into a run: its way through the framing, what is left at its ends, and the piece to cut.</summary>
internal sealed class RunMaking(HouseLayout layout, FramingMap map, System.Collections.Immutable.ImmutableArray<DraftBox> drafts, WayCosts costs)
{
    internal Run Make(CableLeg leg, int circuit, string id, WireSize wire, PageWriter page)
    {
        var rooms = new[] { leg.From, leg.To }.Where(n => !costs.IsPanel(n)).Select(RoomOf);
        var cable = new CableType(RunMethods.Between(layout.House.Job, rooms), wire, leg.Nets.Length);
        var (way, _) = costs.Best(leg.From, leg.To, cable);
        cable = way is RunWay.Underground ? cable with { Method = RunMethods.InGround(layout.House.Job, RoomOf(leg.From), RoomOf(leg.To)) } : cable;
        var path = map.PathFor(costs.PlaceOf(leg.From), costs.PlaceOf(leg.To), way, page);
        var through = page.Compute(Operation.Sum, "run-path", "Path through the framing", Unit.Length, path.Horizontal, path.Vertical);
        var makeUp = page.Compute(Operation.Sum, "run-make-up", "Cable left at both ends", Unit.Length, TailAt(leg.From, page), TailAt(leg.To, page));
        var slack = page.Compute(Operation.PercentOf, "run-slack", "Slack on the path", Unit.Length, through, Slack(layout.House.Job, page));
        return new Run
        {
            Id = id,
            Circuit = circuit,
            From = costs.IsPanel(leg.From) ? -1 : leg.From,
            To = leg.To,
            Role = leg.Role,
            Cable = cable,
            Conductors = CableColours.Of(leg.Nets),
            Path = path,
            MakeUp = makeUp,
            Slack = slack,
            Total = page.Compute(Operation.Sum, "run-total", "Piece to cut", Unit.Length, through, makeUp, slack),
            Fished = costs.Fished(leg.From, leg.To),
        };
    }

    private Room RoomOf(int node) => layout.House.Rooms[costs.PlaceOf(node).Room].Source;

    private Fact TailAt(int node, PageWriter page) =>
        costs.IsPanel(node) ? Tails.AtPanel(layout.House.Job, page) : Tails.At(layout, drafts[node], page);

    internal static Fact Slack(Job job, PageWriter page) => job.Practice.RunSlackPercent is { } own
        ? page.Given("$.practice.run_slack_percent", "Slack on each path", own.ToHundredths(), Unit.Percent)
        : PracticeDefaults.RunSlackPercent.Read(page, Unit.Percent);
}
