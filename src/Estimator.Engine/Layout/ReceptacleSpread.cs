using System.Collections.Immutable;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Layout;

/// <summary>Spreads receptacles along walls and counters so that the farthest point of a wall is as near to one as can be.</summary>
internal static class ReceptacleSpread
{
    /// <summary>Spots along the outline for so many wall receptacles.</summary>
    internal static ImmutableArray<int> AlongWalls(FramedHouse house, int room, int count)
    {
        var least = ReceptacleRules.WallSpaceLeast.Inches().ToSixteenths();
        var all = WallSpaces.Of(house, room);
        var spaces = all.Where(s => s.Length >= least).ToList();
        spaces = spaces.Count > 0 ? spaces : [.. all.DefaultIfEmpty(new WallSpace(0, WallSpaces.SideStarts(house.Rooms[room])[^1], Closed: true))];
        var each = new int[spaces.Count];
        for (var i = 0; i < count; i++)
        {
            // A space without any is worst off; then the one whose receptacles stand farthest apart.
            var next = Enumerable.Range(0, spaces.Count).MaxBy(s => (each[s] == 0, each[s] == 0 ? spaces[s].Length : spaces[s].Length / each[s], -s));
            each[next]++;
        }

        return [.. spaces.SelectMany((s, i) => Even(s, each[i]))];
    }

    /// <summary>So many spots spread evenly over a wall space.</summary>
    internal static IEnumerable<int> Even(WallSpace space, int count) =>
        Enumerable.Range(0, count).Select(i => space.From + (int)((2L * i + 1) * space.Length / (2L * count)));

    /// <summary>Stretches of wall that counters take, along the outline.</summary>
    internal static ImmutableArray<WallSpace> Counters(FramedHouse house, int room)
    {
        var framed = house.Rooms[room];
        var stated = framed.Source.Counters.Where(c => c.Kind is CounterKind.Wall).ToList();
        var free = WallSpaces.Of(house, room).OrderByDescending(s => s.Length).ThenBy(s => s.From).ToList();
        if (stated.Count == 0)
        {
            return free.Count > 0 ? [free[0]] : [new WallSpace(0, WallSpaces.SideStarts(framed)[^1], Closed: true)];
        }

        return [.. stated.Select(c => c.Wall is { } wall ? WallSpaces.OfCounter(house, framed, wall, c.Length) : Taken(free, c.Length.ToSixteenths()))];
    }

    // A counter without a place stands at the start of the longest wall space that is left, and ends where that does.
    private static WallSpace Taken(List<WallSpace> free, int length)
    {
        if (free.Count == 0)
        {
            return new WallSpace(0, length, Closed: false);
        }

        var longest = Enumerable.Range(0, free.Count).MaxBy(i => free[i].Length);
        var space = free[longest];
        var taken = Math.Min(length, space.Length);
        free[longest] = space with { From = space.From + taken, Length = space.Length - taken, Closed = false };
        return space with { Length = taken, Closed = false };
    }

    /// <summary>Spots along the outline for so many counter receptacles.</summary>
    internal static ImmutableArray<int> AlongCounters(FramedHouse house, int room, int count)
    {
        var counters = Counters(house, room);
        var each = new int[counters.Length];
        for (var i = 0; i < count; i++)
        {
            var next = Enumerable.Range(0, counters.Length).MaxBy(s => (each[s] == 0, each[s] == 0 ? counters[s].Length : counters[s].Length / each[s], -s));
            each[next]++;
        }

        return [.. counters.SelectMany((s, i) => Even(s, each[i]))];
    }
}
