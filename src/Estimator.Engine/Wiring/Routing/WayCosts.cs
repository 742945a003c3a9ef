using System.Collections.Immutable;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Wiring.Boxes;

namespace Estimator.Engine.Wiring.Routing;

/// <summary>What it costs, on the planning costs, to bring a cable from one node to another, and by which way.</summary>
/// <remarks>Nodes are boxes by index, then panels. Costs are ten-thousandths of a dollar.</remarks>
internal sealed class WayCosts
{
    private static readonly ImmutableArray<RunWay> Ways = [RunWay.AlongWalls, RunWay.Overhead, RunWay.Underfloor, RunWay.Underground];

    private readonly HouseLayout _layout;
    private readonly FramingMap _map;
    private readonly ImmutableArray<DraftBox> _boxes;
    private readonly ImmutableArray<int> _tails;
    private readonly Dictionary<(int, int, int), ImmutableArray<(RunWay Way, WayLength Length)>> _ways = [];
    private readonly Dictionary<(int, int, int), RunWay> _pinned;

    internal WayCosts(HouseLayout layout, FramingMap map, PlanningPrices prices, ImmutableArray<DraftBox> boxes, Dictionary<(int, int, int), RunWay> pinned)
    {
        (_layout, _map, Prices, _boxes, _pinned) = (layout, map, prices, boxes, pinned);
        _tails = [.. boxes.Select(b => Tails.Sixteenths(layout, b)), .. layout.Panels.Select(_ => Tails.PanelSixteenths(layout.House.Job))];
    }

    internal PlanningPrices Prices { get; }

    internal int PanelNode(int panel) => _boxes.Length + panel;

    internal bool IsPanel(int node) => node >= _boxes.Length;

    internal Placement PlaceOf(int node) => node < _boxes.Length ? _boxes[node].Place : _layout.Panels[node - _boxes.Length].Place;

    /// <summary>Whether a cable between two nodes is fished through finished walls.</summary>
    internal bool Fished(int a, int b) => IsFinished(a) || IsFinished(b);

    /// <summary>The cheapest way for a cable, and its cost.</summary>
    internal (RunWay Way, long CostE4) Best(int a, int b, CableType cable)
    {
        var best = (Way: RunWay.Overhead, CostE4: long.MaxValue);
        foreach (var (way, length) in WaysBetween(a, b, cable.Conductors))
        {
            var cost = CostE4(a, b, length, cable);
            if (cost < best.CostE4)
            {
                best = (way, cost);
            }
        }

        return best;
    }

    private long CostE4(int a, int b, WayLength length, CableType cable)
    {
        var path = length.Horizontal + length.Vertical;
        var cost = Prices.CableE4(cable, path + _tails[a] + _tails[b]);
        return Fished(a, b) ? cost + Prices.FishE4(path) : cost + length.Bores * Prices.BoreE4;
    }

    private ImmutableArray<(RunWay Way, WayLength Length)> WaysBetween(int a, int b, int conductors)
    {
        var (low, high) = a < b ? (a, b) : (b, a);
        var key = (low, high, _pinned.ContainsKey((low, high, conductors)) ? conductors : 0);
        if (!_ways.TryGetValue(key, out var known))
        {
            known = Find(key);
            _ways.Add(key, known);
        }

        return known;
    }

    private ImmutableArray<(RunWay Way, WayLength Length)> Find((int A, int B, int Conductors) key)
    {
        var (a, b, _) = key;
        var found = ImmutableArray.CreateBuilder<(RunWay, WayLength)>(3);
        foreach (var way in _pinned.TryGetValue(key, out var pinned) ? [pinned] : Ways)
        {
            if (_map.TryWay(PlaceOf(a), PlaceOf(b), way, out var length))
            {
                found.Add((way, length));
            }
        }

        if (found.Count == 0)
        {
            // A pinned way that the framing does not have.
            var there = _map.TryWay(PlaceOf(a), PlaceOf(b), RunWay.Overhead, out var length) ? RunWay.Overhead : RunWay.Underground;
            _map.TryWay(PlaceOf(a), PlaceOf(b), there, out length);
            found.Add((there, length));
        }

        return found.ToImmutable();
    }

    private bool IsFinished(int node) =>
        node < _boxes.Length && _layout.House.Rooms[_boxes[node].Place.Room].Source.Walls is WallState.Finished;
}
