using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Framing;

/// <summary>The ways of a cable through the framing of a house.</summary>
/// <remarks>
/// Along walls: through bored studs of one level. Overhead: up, across the joists of a level, down; also from level to level, where the upper end is
/// met from under its floor, or over a riser in a stud bay at a corner of the upper level's rooms. Under the floor: down, across, up. From building to
/// building: to the trench by the shorter of the ways along walls and overhead, through it, and on alike.
/// Source: common practice, no source; horizontal ways keep square to the house.
/// </remarks>
public sealed class FramingMap
{
    private const int PlatesUnderFloor = 2;

    private readonly FramedHouse _house;
    private readonly Trenches _trenches;
    private readonly UndergroundWays _underground;
    private readonly ImmutableArray<OverheadRegion> _over;
    private readonly Dictionary<(int Level, bool AboveSills), WallGraph> _walls = [];
    private readonly int _plate;
    private readonly int _lowRun;
    private readonly int _cornerStuds;

    /// <summary>A map of the house.</summary>
    /// <param name="house">The house in canonical pose.</param>
    public FramingMap(FramedHouse house)
    {
        _house = house;
        _trenches = new Trenches(house);
        _underground = new UndergroundWays(this, _trenches);
        _over = [.. house.Levels.Select(l => new OverheadRegion(house, l, l.JoistsAlongX))];
        _plate = PracticeDefaults.PlateThickness.Inches().ToSixteenths();
        _lowRun = WiringSettings.LowRunHeight.Inches().ToSixteenths();
        _cornerStuds = (int)WiringSettings.CornerStuds.Number();
    }

    /// <summary>The length of a way; false where that way does not exist. Overhead always exists in a building, bridged straight where no framing joins the ends.</summary>
    public bool TryWay(Placement a, Placement b, RunWay way, out WayLength length)
    {
        length = default;
        if (way is RunWay.Underground != (_trenches.Between(a.Room, b.Room) is not null))
        {
            return false;
        }

        switch (way)
        {
            case RunWay.Underground:
                length = _underground.LengthOf(a, b);
                return true;
            case RunWay.AlongWalls when CanBore(a, b) && Walls(a, b).TryWay(a, b, out var along, out var corners):
                length = new WayLength(along, Math.Abs(a.Height - b.Height), along / StudSpacing(a.Level) + corners * _cornerStuds);
                return true;
            case RunWay.Underfloor when Under(a, b) is { } region && region.TryDistance(a.Spot, b.Spot, out var across, out var crossed):
                length = new WayLength(across, a.Height + b.Height + 2 * _plate, PlatesUnderFloor + crossed / JoistSpacing(_house.Levels[a.Level].JoistsUnder));
                return true;
            case RunWay.Overhead:
                length = Over(a, b).Length;
                return true;
            default:
                return false;
        }
    }

    /// <summary>A way with its turns and its explained lengths.</summary>
    /// <exception cref="ArgumentException">That way does not exist.</exception>
    public RunPath PathFor(Placement a, Placement b, RunWay way, PageWriter page)
    {
        if (!TryWay(a, b, way, out _))
        {
            throw new ArgumentException($"There is no way {way} between these places.", nameof(way));
        }

        return way is RunWay.Underground ? _underground.PathFor(a, b, page) : new PathExplaining(_house, page).Explain(way switch
        {
            RunWay.AlongWalls => AlongWalls(a, b),
            RunWay.Underfloor => BelowFloor(a, b),
            _ => Overhead(a, b),
        });
    }

    private PathDraft AlongWalls(Placement a, Placement b)
    {
        var turns = Walls(a, b).Way(a, b);
        Walls(a, b).TryWay(a, b, out _, out var corners);
        return new PathDraft
        {
            Way = RunWay.AlongWalls,
            From = a,
            To = b,
            Turns = [.. turns.Select((t, i) => new Waypoint(a.Level, t.Spot, i == turns.Length - 1 ? b.Height : a.Height))],
            OnWalls = turns,
            Corners = corners,
        };
    }

    private PathDraft BelowFloor(Placement a, Placement b) => new()
    {
        Way = RunWay.Underfloor,
        From = a,
        To = b,
        Turns =
        [
            new Waypoint(a.Level, a.Spot, a.Height),
            .. Under(a, b)!.Way(a.Spot, b.Spot).Select(t => new Waypoint(a.Level, t, -_plate)),
            new Waypoint(b.Level, b.Spot, b.Height),
        ],
        Plates = PlatesUnderFloor,
    };

    private PathDraft Overhead(Placement a, Placement b)
    {
        var over = Over(a, b);
        var turns = new List<Waypoint> { new(over.Low.Level, over.Low.Spot, over.Low.Height) };
        foreach (var stage in over.Stages)
        {
            turns.AddRange((stage.UnderOneRoof ? [stage.From, stage.To] : _over[stage.Level].Way(stage.From, stage.To)).Select(p => new Waypoint(stage.Level, p, LevelCeiling(stage.Level) + _plate)));
        }

        turns.Add(new Waypoint(over.High.Level, over.High.Spot, over.High.Height));
        return new PathDraft
        {
            Way = RunWay.Overhead,
            From = over.Low,
            To = over.High,
            Turns = [.. over.Low == a ? turns : Enumerable.Reverse(turns)],
            Plates = over.Plates,
            Bridged = over.Bridged,
        };
    }

    private OverheadWay Over(Placement a, Placement b)
    {
        var (low, high) = a.Level <= b.Level ? (a, b) : (b, a);
        if (low.Level == high.Level)
        {
            var stage = new OverheadStage(low.Level, low.Spot, high.Spot, UnderOneRoof(low, high));
            var joined = TryStage(stage, out var distance, out var across);
            var plates = (low.Mount is Mount.Wall ? 1 : 0) + (high.Mount is Mount.Wall ? 1 : 0);
            return new OverheadWay(
                low, high, [stage],
                new WayLength(distance, Drop(low) + Drop(high), plates + across / JoistSpacing(low.Level)), plates, !joined);
        }

        return Climb(low, high);
    }

    // From the lower level's joists up: each level that is passed, and the upper one where its ceiling is the goal, is climbed in a stud bay at a
    // corner of one of its rooms, the one that makes the way shortest; where it has no room with walls, below the goal.
    private OverheadWay Climb(Placement low, Placement high)
    {
        var top = high.Mount is Mount.Ceiling ? high.Level : high.Level - 1;
        var ways = new List<(long Length, int Across, bool Bridged, ImmutableArray<OverheadStage> Stages, PlanPoint At)>
        {
            (0, 0, false, [], low.Spot),
        };
        for (var level = low.Level; level <= top; level++)
        {
            IEnumerable<PlanPoint> goals = level == top ? [high.Spot] : Risers(level + 1, high.Room).DefaultIfEmpty(high.Spot);
            ways = [.. goals.Select(g => ways.Select(w => Extend(w, level, g)).MinBy(w => (w.Bridged, w.Length, w.Across)))];
        }

        var best = ways[0];
        var plates = (low.Mount is Mount.Wall ? 1 : 0) + (high.Mount is Mount.Wall ? 1 : 0) + 2 * (top - low.Level);
        var vertical = Math.Abs(Altitude(high) - Altitude(low));
        return new OverheadWay(low, high, best.Stages, new WayLength((int)best.Length, vertical, plates + best.Stages.Sum(JoistsBored)), plates, best.Bridged);
    }

    private (long Length, int Across, bool Bridged, ImmutableArray<OverheadStage> Stages, PlanPoint At) Extend(
        (long Length, int Across, bool Bridged, ImmutableArray<OverheadStage> Stages, PlanPoint At) way, int level, PlanPoint goal)
    {
        var stage = new OverheadStage(level, way.At, goal, UnderOneRoof: false);
        var joined = TryStage(stage, out var distance, out var across);
        return (
            way.Length + distance,
            way.Across + across,
            way.Bridged || !joined,
            way.Stages.Add(stage),
            goal);
    }

    private bool TryStage(OverheadStage stage, out int distance, out int across)
    {
        if (!stage.UnderOneRoof)
        {
            return _over[stage.Level].TryDistance(stage.From, stage.To, out distance, out across);
        }

        (distance, across) = _over[stage.Level].Straight(stage.From, stage.To);
        return true;
    }

    // Outlets of one porch are joined over its own ceiling, which is no part of the building's.
    private bool UnderOneRoof(Placement a, Placement b) => a.Room == b.Room && _house.Rooms[a.Room].Source.Kind is RoomKind.Outdoors;

    private int JoistsBored(OverheadStage stage)
    {
        TryStage(stage, out _, out var across);
        return across / JoistSpacing(stage.Level);
    }

    private IEnumerable<PlanPoint> Risers(int level, int room) =>
        _house.Levels[level].Rooms.Where(r => _trenches.Together(r, room) && _house.Rooms[r].Source.Kind is not (RoomKind.Void or RoomKind.Outdoors))
            .SelectMany(r => _house.Rooms[r].Corners).Distinct().Order();

    private WallGraph Walls(Placement a, Placement b)
    {
        var key = (a.Level, a.Height > _lowRun || b.Height > _lowRun);
        if (!_walls.TryGetValue(key, out var graph))
        {
            graph = new WallGraph(_house, _house.Levels[a.Level], key.Item2);
            _walls.Add(key, graph);
        }

        return graph;
    }

    private OverheadRegion? Under(Placement a, Placement b) =>
        a.Level == b.Level && a.Mount is Mount.Wall && b.Mount is Mount.Wall && _house.Levels[a.Level].OpenBelow && _house.Rooms[a.Room].Source.Building is null
            ? _over[_house.Levels[a.Level].JoistsUnder]
            : null;

    private bool CanBore(Placement a, Placement b) => a.Level == b.Level && a.Mount is Mount.Wall && b.Mount is Mount.Wall
        && _house.Rooms[a.Room].Source.Walls is WallState.Open && _house.Rooms[b.Room].Source.Walls is WallState.Open;

    private int Drop(Placement place) => place.Mount is Mount.Ceiling ? 0 : Math.Max(0, _house.Rooms[place.Room].Ceiling + _plate - place.Height);

    private int Altitude(Placement place) =>
        _house.Levels[place.Level].Elevation + (place.Mount is Mount.Ceiling ? _house.Rooms[place.Room].Ceiling + _plate : place.Height);

    private int LevelCeiling(int level) => _house.Levels[level].Source.CeilingHeight.ToSixteenths();

    private int StudSpacing(int level) => Sixteenths(_house.Levels[level].StudSpacing);

    private int JoistSpacing(int level) => Sixteenths(_house.Levels[level].JoistSpacing);

    private static int Sixteenths(Fact length) => Math.Max(1, length.AsLength().Value.ToSixteenths());

    private sealed record OverheadStage(int Level, PlanPoint From, PlanPoint To, bool UnderOneRoof);

    private sealed record OverheadWay(
        Placement Low, Placement High, ImmutableArray<OverheadStage> Stages, WayLength Length, int Plates, bool Bridged);
}
