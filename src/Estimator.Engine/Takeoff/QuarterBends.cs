using System.Numerics;
using Estimator.Engine.Framing;
using Estimator.Engine.House;

namespace Estimator.Engine.Takeoff;

/// <summary>How often a stiff pipe changes its direction on a way.</summary>
internal static class QuarterBends
{
    /// <summary>Quarter bends between the boxes of a way.</summary>
    internal static int Of(RunPath path)
    {
        var moves = path.Turns.Zip(path.Turns.Skip(1)).SelectMany(t => Level(t.First, t.Second, path.Way is RunWay.AlongWalls or RunWay.Underground).Concat(Climb(t.First, t.Second))).ToList();
        return moves.Zip(moves.Skip(1)).Count(m => m.First != m.Second);
    }

    // Along walls a step follows its wall, and a trench goes straight, however they lie; else a way goes square to the house, along one side and then the other.
    private static IEnumerable<(int X, int Y, int Z)> Level(Waypoint from, Waypoint to, bool straight)
    {
        var (x, y) = (to.Spot.X - from.Spot.X, to.Spot.Y - from.Spot.Y);
        if (straight && (x, y) != (0, 0))
        {
            var common = (int)BigInteger.GreatestCommonDivisor(x, y);
            return [(x / common, y / common, 0)];
        }

        return new[] { (Math.Sign(x), 0, 0), (0, Math.Sign(y), 0) }.Where(m => m != (0, 0, 0));
    }

    private static IEnumerable<(int X, int Y, int Z)> Climb(Waypoint from, Waypoint to)
    {
        var up = from.Level != to.Level ? Math.Sign(to.Level - from.Level) : Math.Sign(to.Height - from.Height);
        return up == 0 ? [] : [(0, 0, up)];
    }
}
