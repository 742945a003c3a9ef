using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Controls;
using Estimator.Engine.Framing;
using Estimator.Engine.Layout;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Circuits;
using Estimator.Engine.Wiring.Feeders;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring;

/// <summary>Finds circuits, runs and boxes together.</summary>
public static class HouseWiring
{
    /// <summary>Number of the first page of the explanation book that holds a group of the wiring.</summary>
    public const int FirstPage = 100;

    /// <summary>The wiring of a house.</summary>
    /// <param name="layout">Where everything stands.</param>
    /// <param name="controls">What acts on what.</param>
    /// <param name="boxItems">Boxes that can be bought.</param>
    /// <param name="depth">How far the search goes.</param>
    /// <exception cref="ArgumentException">The house has no panel.</exception>
    public static WiringPlan Plan(HouseLayout layout, ControlPlan controls, ImmutableArray<BoxItem> boxItems, SearchDepth depth) =>
        Plan(layout, controls, boxItems, depth, _ => { });

    internal static WiringPlan Plan(HouseLayout layout, ControlPlan controls, ImmutableArray<BoxItem> boxItems, SearchDepth depth, Action<SearchTrace> visited)
    {
        if (layout.Panels.IsEmpty)
        {
            throw new ArgumentException("A house is wired from a panel and this one has none.", nameof(layout));
        }

        var drafts = BoxForming.Form(layout);
        var map = new FramingMap(layout.House);
        var costs = new WayCosts(layout, map, new PlanningPrices(layout.House.Job.PlanningCosts), drafts, PinnedLinks.Ways(layout, drafts));
        var choice = new BoxChoice(boxItems, layout.House.Job.Code.Edition);
        var solver = new GroupSolver(layout, controls, drafts, map, costs, choice, depth);
        var assembly = new PlanAssembly(layout, drafts, costs);
        var groups = GroupForming.Form(layout, controls, drafts, costs);
        for (var g = 0; g < groups.Length; g++)
        {
            assembly.Add(solver.Solve(groups[g], FirstPage + g, visited));
        }

        var feeders = new FeederMaking(layout, map, costs).Make();
        var plan = assembly.ToPlan();
        return plan with { Feeders = feeders.Feeders, Findings = [.. plan.Findings, .. feeders.Findings], Pages = [.. plan.Pages, feeders.Page] };
    }
}
