using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Controls;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Circuits;
using Estimator.Engine.Wiring.Joints;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring;

/// <summary>Solves one group: circuits, conductors, runs and boxes in at most so many rounds, and says which round changed what.</summary>
internal sealed class GroupSolver(
    HouseLayout layout, ControlPlan controls, ImmutableArray<DraftBox> drafts, FramingMap map, WayCosts costs, BoxChoice choice, SearchDepth depth)
{
    private readonly EntryLimits _limits = new(layout, choice);
    private readonly RunMaking _runs = new(layout, map, drafts, costs);

    internal SolvedGroup Solve(WiringGroup group, int pageNumber, Action<SearchTrace> visited)
    {
        var page = new PageWriter(pageNumber);
        var search = Planner(group, page);
        var planned = search.Plan((int)(depth is SearchDepth.Quick ? WiringSettings.QuickSearchPasses : WiringSettings.SearchPasses).Number());
        visited(new SearchTrace(group, search.Units, [.. search.Visited]));
        var best = Solved(group, search, planned, page);
        // The search knows conductors by rating alone. Where a circuit then took a thicker one, a division that looked dearer may be the cheaper.
        if (best.Circuits.Any(c => c.Wire > c.Draft.Rating.Wire))
        {
            best = search.Visited.Select(v => Anew(group, pageNumber, v)).Append(best).MinBy(s => s.Circuits.Sum(c => c.CostE4(layout.House.Job, costs)))!;
        }

        return best;
    }

    // Circuits that the user wants to share a neutral, where that costs less than two home runs and the first box takes the cables.
    private ImmutableArray<SolvedCircuit> Paired(WiringGroup group, ImmutableArray<SolvedCircuit> solved, PageWriter page)
    {
        var circuits = ImmutableArray.CreateBuilder<SolvedCircuit>(solved.Length);
        var paired = new HashSet<int>();
        foreach (var (carries, joins) in new MultiwirePairing(layout.House.Job, costs).Pairs(group, solved))
        {
            var (first, second) = (solved[carries].Draft, solved[joins].Draft);
            var common = Measure(first with { Shared = new SharedHomeRun(null, EntryOf(second)) }, circuits.Count, page);
            var leaving = Measure(second with { Shared = new SharedHomeRun(EntryOf(first), null) }, circuits.Count + 1, page, common.Runs[0]);
            if (common.Boxes[0].Fits && leaving.DropPercent.Value <= CircuitDrop.ThickerFrom(layout.House.Job, page).Value)
            {
                circuits.AddRange(common, leaving);
                paired.UnionWith([carries, joins]);
            }
        }

        circuits.AddRange(solved.Where((_, i) => !paired.Contains(i)));
        return circuits.MoveToImmutable();
    }

    private static int EntryOf(DraftCircuit draft) => draft.Units[draft.Feed.Links[0].Unit].Entry;

    private GroupPlanner Planner(WiringGroup group, PageWriter page)
    {
        var rating = Rate(group, page);
        return new GroupPlanner(layout, controls, drafts, group, costs, _limits, rating, rating.Wire);
    }

    private SolvedGroup Anew(WiringGroup group, int pageNumber, ImmutableArray<ImmutableArray<int>> circuits)
    {
        var page = new PageWriter(pageNumber);
        return Solved(group, Planner(group, page), circuits, page);
    }

    private SolvedGroup Solved(WiringGroup group, GroupPlanner planner, ImmutableArray<ImmutableArray<int>> circuits, PageWriter page)
    {
        var findings = new List<Finding>();
        var solved = circuits.Select((c, i) => Finish(planner.Draft(c), i, page, findings)).ToImmutableArray();
        return new SolvedGroup(group, Paired(group, solved, page), [.. findings], page.ToPage());
    }

    private CircuitRating Rate(WiringGroup group, PageWriter page)
    {
        var rating = ByRule(group, PinnedBreaker(group.Pinned, page), page);
        return group.Pinned?.Wire is { } wire ? rating with { Wire = wire } : rating;
    }

    private CircuitRating ByRule(WiringGroup group, Fact? pinned, PageWriter page)
    {
        if (group.Kind is not CircuitKind.Individual)
        {
            return CircuitRatingRules.ForKind(group.Kind, pinned, page);
        }

        var equipment = drafts[group.Units[0][0]].Equipment;
        return equipment >= 0 ? CircuitRatingRules.ForEquipment(layout.Equipment[equipment], pinned, page) : CircuitRatingRules.ForReceptacle240(pinned, page);
    }

    private Fact? PinnedBreaker(PinnedCircuit? pinned, PageWriter page) => pinned?.BreakerA is { } own
        ? page.Given($"$.pins.circuits[{layout.House.Job.Pins.Circuits.IndexOf(pinned)}].breaker_a", "Breaker", own.ToAmperes(), Unit.Amperes)
        : null;

    // Round one is the plan on the rating's own conductor. While the farthest outlet loses too much, a further round takes the next
    // thicker conductor and feeds the same outlets anew, since thicker conductors leave less room in the boxes. A pinned size stays: it may be in the wall.
    private SolvedCircuit Finish(DraftCircuit draft, int number, PageWriter page, List<Finding> findings)
    {
        var rounds = (int)WiringSettings.SolveRounds.Number();
        var limit = CircuitDrop.ThickerFrom(layout.House.Job, page);
        var solved = Measure(draft, number, page);
        for (var round = 2; round <= rounds && draft.Group.Pinned?.Wire is null && solved.DropPercent.Value > limit.Value && NextThicker(draft.Wire) is { } wire && wire > draft.Wire; round++)
        {
            var thinner = solved;
            draft = Fed(draft, wire);
            solved = Measure(draft, number, page);
            findings.Add(Thicker(thinner, solved, round, limit));
        }

        return solved;
    }

    private DraftCircuit Fed(DraftCircuit draft, WireSize wire)
    {
        var alone = draft.Group with { Units = [.. draft.Units.Select(u => u.Boxes)] };
        return new GroupPlanner(layout, controls, drafts, alone, costs, _limits, draft.Rating, wire).Together();
    }

    private static WireSize NextThicker(WireSize wire) =>
        WireSize.All.Where(s => s > wire && Conductors.Has(s) && Conductors.For(s).Has("nm_b_ampacity_cu_334_80")).DefaultIfEmpty(wire).First();

    private SolvedCircuit Measure(DraftCircuit draft, int number, PageWriter page, Run? common = null)
    {
        var panel = draft.Shared?.JoinedAt ?? costs.PanelNode(draft.Group.Panel);
        draft = draft with { Feed = draft.Feed with { Links = draft.Feed.Links.SetItem(0, draft.Feed.Links[0] with { From = panel }) } };
        var tree = new CircuitTree(draft, panel, b => drafts[b].Equipment >= 0 ? 1 : drafts[b].Devices.Count(d => !layout.Devices[d].Kind.IsSwitch()));
        var runs = tree.Legs.Select((l, i) => _runs.Make(l, number, $"run-{i + 1}", draft.Wire, page)).ToImmutableArray();
        var runInto = new Dictionary<int, Run>();
        for (var i = 0; i < runs.Length; i++)
        {
            if (tree.ParentOf(runs[i].To) == tree.Legs[i].From)
            {
                runInto.TryAdd(runs[i].To, runs[i]);
            }
        }

        var loadVa = CircuitLoad.Of(layout, drafts, draft, page);
        var loadA = CircuitLoad.DropCurrent(draft, loadVa, page);
        var drop = CircuitDrop.Percent(draft, tree, panel, runInto, loadA, draft.Wire, page, common);
        return new SolvedCircuit(draft, tree, runs, Boxes(draft, tree, number, page), loadVa, drop, draft.Wire);
    }

    private ImmutableArray<Box> Boxes(DraftCircuit draft, CircuitTree tree, int number, PageWriter page)
    {
        var first = tree.Boxes[0];
        return [.. tree.Boxes.Select(b => Fill(b, draft, tree, number, page, Exchanged(draft, b, first)))];
    }

    private bool Exchanged(DraftCircuit draft, int box, int first) => !ProtectionNeeds.ProtectsItself(layout, drafts[box]) && draft.GroundFault switch
    {
        ProtectedBy.First => box == first,
        ProtectedBy.Each => ProtectionNeeds.GroundFault(layout, drafts[box]),
        _ => false,
    };

    private Box Fill(int index, DraftCircuit draft, CircuitTree tree, int number, PageWriter page, bool protects)
    {
        var box = drafts[index];
        var legs = tree.LegsWithPartner(draft);
        var loads = BoxLoads.Of(layout, box, legs, draft.Wire);
        var unit = draft.Units.First(u => u.Boxes.Contains(index));
        var handsOn = (protects && draft.GroundFault is ProtectedBy.First) || ProtectionNeeds.ProtectsItself(layout, box);
        var (item, required, fits) = choice.For(loads, page);
        return new Box
        {
            Id = box.Id,
            Circuit = number,
            Place = box.Place,
            Devices = box.Devices,
            Equipment = box.Equipment,
            Use = box.Use,
            OldWork = box.OldWork,
            Gangs = box.Gangs,
            Item = box.Use is BoxUse.OwnHousing ? null : item,
            RequiredVolume = required,
            Fits = fits,
            OwnGroundFault = protects,
            CableEntries = loads.Entering.Length,
            Joints = new Joining(index, draft.Wire, unit.NeutralOrigins).Of(legs, unit.Terminals[index], handsOn),
        };
    }

    private Finding Thicker(SolvedCircuit thinner, SolvedCircuit solved, int round, Fact limit) => new()
    {
        Code = "conductor-for-voltage-drop",
        Severity = Severity.Note,
        Where = [.. solved.Boxes.Select(b => b.Id)],
        Text = FormattableString.Invariant(
            $"Round {round}: {solved.Wire} AWG instead of {thinner.Wire}, on which the farthest outlet would lose {thinner.DropPercent.Value:0.##}%, more than {limit.Value:0.##}%."),
        Article = "210.19",
        Edition = $"NEC {(int)layout.House.Job.Code.Edition}",
        Figures = [thinner.DropPercent.Node, limit.Node, solved.DropPercent.Node],
    };
}
