using System.Collections.Immutable;
using Estimator.Engine.Controls;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Panels;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>Plans the circuits of one group.</summary>
internal sealed class GroupPlanner
{
    private readonly HouseLayout _layout;
    private readonly ImmutableArray<DraftBox> _drafts;
    private readonly WiringGroup _group;
    private readonly WayCosts _costs;
    private readonly CircuitRating _rating;
    private readonly WireSize _wire;
    private readonly int _panel;
    private readonly ImmutableArray<ImmutableArray<WiringUnit>> _ways;
    private readonly FeedGrowing _growing;
    private readonly Func<int, long> _fromPanel;
    private readonly PinnedLinks _pins;
    private readonly ImmutableArray<ImmutableArray<int>> _counters;

    internal GroupPlanner(
        HouseLayout layout, ControlPlan controls, ImmutableArray<DraftBox> drafts, WiringGroup group, WayCosts costs, EntryLimits limits, CircuitRating rating,
        WireSize wire)
    {
        (_layout, _drafts, _group, _costs, _rating, _wire) = (layout, drafts, group, costs, rating, wire);
        _panel = costs.PanelNode(group.Panel);
        var pins = _pins = PinnedLinks.Of(layout, drafts, group, _panel);
        var unitCosts = new UnitCosts(layout.House.Job, costs, pins, _panel, wire, rating.Conductors);
        _fromPanel = box => unitCosts.Feed(_panel, box);
        var making = new UnitMaking(layout, controls, drafts, unitCosts, limits, wire);
        _ways = [.. group.Units.Select(u => making.Ways(u, rating))];
        Units = [.. _ways.Select(w => w[0])];
        _growing = new FeedGrowing(_ways, _panel, unitCosts.Feed, pins.IsEmpty ? costs.Prices.PanelEntryE4 : 0);
        _counters = Counters();
    }

    /// <summary>The units, each in the first of its ways.</summary>
    internal ImmutableArray<WiringUnit> Units { get; }

    /// <summary>The partitions that were the best when they were found, for tests of the search.</summary>
    internal List<ImmutableArray<ImmutableArray<int>>> Visited { get; private set; } = [];

    /// <summary>How the units are best divided among circuits.</summary>
    /// <param name="passes">Passes of the local search at most.</param>
    internal ImmutableArray<ImmutableArray<int>> Plan(int passes)
    {
        ImmutableArray<ImmutableArray<int>> circuits = _group.Joining is null
            ? [[.. Enumerable.Range(0, Units.Length)]]
            : [[.. Enumerable.Range(0, _group.Carried)], [.. Enumerable.Range(_group.Carried, Units.Length - _group.Carried)]];
        if (_group.Pinned is null && Units.Length > 1)
        {
            var least = _group.Kind is CircuitKind.SmallAppliance ? (int)LocalRules.Figure(_layout.House.Job.Code, "required-circuits", WiringSettings.SmallApplianceCircuits.Number()) : 1;
            var search = new CircuitSearch(Units.Length, m => Cost(m), least, passes);
            circuits = search.Divide();
            Visited = search.Visited;
        }

        return circuits;
    }

    /// <summary>All units of the group on one circuit.</summary>
    internal DraftCircuit Together() => Draft([.. Enumerable.Range(0, Units.Length)]);

    private long? Cost(ImmutableArray<int> members) => members.Length > 1 && (!Fits(members) || TakesAllCounters(members)) ? null : Draft(members).CostE4;

    // The counters of a kitchen hang on two small-appliance circuits or more, 210.52(B)(3): no circuit takes them all.
    private bool TakesAllCounters(ImmutableArray<int> members) => _counters.Any(c => c.All(u => members.Contains(u)));

    private ImmutableArray<ImmutableArray<int>> Counters() => _group.Kind is not CircuitKind.SmallAppliance ? [] :
    [
        .. Enumerable.Range(0, Units.Length).Where(u => Units[u].Boxes.Any(b => _drafts[b].Devices.Any(d => _layout.Devices[d].Serves is ServedPlace.Counter)))
            .GroupBy(u => _drafts[Units[u].Entry].Place.Room).Where(g => g.Count() > 1).Select(g => g.ToImmutableArray()),
    ];

    private bool Fits(ImmutableArray<int> members) =>
        CircuitRoom.Holds(_layout.House.Job, _group.Kind, _rating.BreakerA.Value, members.Sum(m => Units[m].Outlets), members.Sum(m => Units[m].LoadVa));

    /// <summary>The units of one circuit with their feed, protection and cost.</summary>
    internal DraftCircuit Draft(ImmutableArray<int> members)
    {
        var arc = members.Any(m => Units[m].Boxes.Any(b => ProtectionNeeds.ArcFault(_layout, _drafts[b])));
        var rooms = members.SelectMany(m => Units[m].Rooms).Distinct().Count() * _costs.Prices.RoomE4;
        var open = Unprotected(members);
        var each = open.Count > 0 && EachMay(members, open) ? With(members, -1, Breaker(arc, groundFault: false), ProtectedBy.Each, rooms + open.Count * _costs.Prices.GroundFaultReceptacleE4) : null;
        var inBreaker = With(members, -1, Breaker(arc, open.Count > 0), ProtectedBy.Breaker, rooms);
        var first = open.Count > 0 ? FirstReceptacle(members) : -1;
        var wanted = Wanted(members);
        if (wanted is GroundFaultBy.Breaker)
        {
            return inBreaker;
        }

        if (first < 0 || each is not null)
        {
            return each is not null && (each.CostE4 < inBreaker.CostE4 || wanted is GroundFaultBy.FirstReceptacle) ? each : inBreaker;
        }

        var atFirst = With(members, first, Breaker(arc, groundFault: false), ProtectedBy.First, rooms + ExtraForReceptacle(first));
        return wanted is GroundFaultBy.FirstReceptacle || atFirst.CostE4 < inBreaker.CostE4 ? atFirst : inBreaker;
    }

    private GroundFaultBy Wanted(ImmutableArray<int> members) =>
        (_group.Joining is not null && members[0] >= _group.Carried ? _group.Joining : _group.Pinned)?.GroundFaultBy ?? _layout.House.Job.Practice.GroundFaultBy ?? GroundFaultBy.Cheaper;

    private DraftCircuit With(ImmutableArray<int> members, int first, Protection protection, ProtectedBy groundFault, long extra)
    {
        var feed = _growing.Grow(members, first);
        var breaker = _costs.Prices.BreakerE4(_rating.Poles, protection);
        return new DraftCircuit(
            _group, _rating, _wire, Wired(feed, members), Local(feed, members), protection, groundFault, feed.CostE4 + breaker + extra);
    }

    private ImmutableArray<WiringUnit> Wired(FeedTree feed, ImmutableArray<int> members)
    {
        var way = feed.Links.ToDictionary(l => l.Unit, l => l.Way);
        return [.. members.Select(m => _ways[m][way[m]])];
    }

    private static FeedTree Local(FeedTree feed, ImmutableArray<int> members) =>
        feed with { Links = [.. feed.Links.Select(l => l with { Unit = members.IndexOf(l.Unit) })] };

    private List<int> Unprotected(ImmutableArray<int> members) => [.. members.SelectMany(m => Units[m].Boxes)
        .Where(b => ProtectionNeeds.GroundFault(_layout, _drafts[b]) && !ProtectionNeeds.ProtectsItself(_layout, _drafts[b]))];

    // Where only a few outlets of a circuit need it, each takes its own device.
    private bool EachMay(ImmutableArray<int> members, List<int> open) => open.Count <= WiringSettings.OwnGroundFaultMost.Number()
        && members.Sum(m => Units[m].Outlets) > open.Count && _rating.Poles == 1
        && open.All(b => ProtectionNeeds.TakesGroundFaultReceptacle(_layout, _drafts[b]));

    private int FirstReceptacle(ImmutableArray<int> members)
    {
        var takes = members.Where(m => _rating.Poles == 1 && ProtectionNeeds.TakesGroundFaultReceptacle(_layout, _drafts[Units[m].Entry])).ToList();
        var own = takes.Where(m => ProtectionNeeds.ProtectsItself(_layout, _drafts[Units[m].Entry])).ToList();
        if (!_pins.IsEmpty)
        {
            // A pinned home run says which receptacle comes first.
            return takes.Where(m => _pins.Holds(_panel, Units[m].Entry)).DefaultIfEmpty(-1).First();
        }

        return (own.Count > 0 ? own : takes).DefaultIfEmpty(-1).MinBy(m => m < 0 ? 0 : _fromPanel(Units[m].Entry));
    }

    private long ExtraForReceptacle(int first) =>
        ProtectionNeeds.ProtectsItself(_layout, _drafts[Units[first].Entry]) ? 0 : _costs.Prices.GroundFaultReceptacleE4;

    private static Protection Breaker(bool arcFault, bool groundFault) => (arcFault, groundFault) switch
    {
        (true, true) => Protection.DualFunction,
        (true, false) => Protection.ArcFault,
        (false, true) => Protection.GroundFault,
        _ => Protection.Plain,
    };
}
