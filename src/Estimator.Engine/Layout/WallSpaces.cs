using System.Collections.Immutable;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Layout;

/// <summary>Finds the wall spaces of a room.</summary>
/// <remarks>Corners and windows do not break a wall space; doorways and wide openings do. Source: NEC 210.52(A)(2).</remarks>
public static class WallSpaces
{
    /// <summary>The wall spaces of a room, along the outline from its first corner.</summary>
    public static ImmutableArray<WallSpace> Of(FramedHouse house, int room)
    {
        var starts = SideStarts(house.Rooms[room]);
        var round = starts[^1];
        var breaks = house.Openings.Where(o => o.Room == room && o.BreaksFloorLine && o.To > o.From)
            .Select(o => (From: starts[o.Side] + o.From, To: starts[o.Side] + o.To)).Concat(Counters(house, house.Rooms[room], starts)).OrderBy(b => b.From).ToList();
        if (breaks.Count == 0)
        {
            return [new WallSpace(0, round, Closed: true)];
        }

        var spaces = ImmutableArray.CreateBuilder<WallSpace>();
        var end = breaks[0].To;
        foreach (var (from, to) in breaks.Skip(1))
        {
            if (from > end)
            {
                spaces.Add(new WallSpace(end, from - end, Closed: false));
            }

            end = Math.Max(end, to);
        }

        var last = breaks[0].From + round - end;
        if (last > 0)
        {
            spaces.Add(new WallSpace(end % round, last, Closed: false));
        }

        return spaces.ToImmutable();
    }

    // A counter with a stated place has its own rule, 210.52(C), and its receptacles do not count for the wall, 210.52(A)(4).
    private static IEnumerable<(int From, int To)> Counters(FramedHouse house, FramedRoom room, ImmutableArray<int> starts)
    {
        foreach (var counter in room.Source.Counters.Where(c => c.Kind is CounterKind.Wall && c.Wall is not null))
        {
            var (from, length, _) = OfCounter(house, room, counter.Wall!, counter.Length);
            yield return (from, Math.Min(starts[^1], from + length));
            if (from + length > starts[^1])
            {
                yield return (0, from + length - starts[^1]);
            }
        }
    }

    /// <summary>The stretch of a counter whose middle the user gave; what is longer than its wall goes on round the corners.</summary>
    internal static WallSpace OfCounter(FramedHouse house, FramedRoom room, WallSpot middle, Length length)
    {
        var starts = SideStarts(room);
        var (side, offset) = WallSpots.Of(room, middle, house.Pose);
        var whole = Math.Min(length.ToSixteenths(), starts[^1]);
        return new WallSpace((starts[side] + offset - whole / 2 + starts[^1]) % starts[^1], whole, Closed: false);
    }

    /// <summary>The side and the offset along it of a point of the outline.</summary>
    public static (int Side, int Offset) SpotAt(FramedRoom room, int along)
    {
        var starts = SideStarts(room);
        var at = along % starts[^1];
        var side = 0;
        while (side + 1 < room.Corners.Length && starts[side + 1] <= at)
        {
            side++;
        }

        return (side, at - starts[side]);
    }

    /// <summary>Where each side starts along the outline; the last entry is the whole way round.</summary>
    public static ImmutableArray<int> SideStarts(FramedRoom room)
    {
        var starts = ImmutableArray.CreateBuilder<int>(room.Corners.Length + 1);
        starts.Add(0);
        for (var side = 0; side < room.Corners.Length; side++)
        {
            starts.Add(starts[^1] + WallSpots.LengthOf(room, side));
        }

        return starts.MoveToImmutable();
    }
}
