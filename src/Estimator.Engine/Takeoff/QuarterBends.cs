using Estimator.Engine.Framing;

namespace Estimator.Engine.Takeoff;

/// <summary>How often a stiff pipe changes its direction on a way.</summary>
internal static class QuarterBends
{
    /// <summary>Quarter bends between the boxes of a way.</summary>
    internal static int Of(RunPath path)
    {
        var moves = path.Turns.Zip(path.Turns.Skip(1)).SelectMany(t => Moves(t.First, t.Second)).ToList();
        return moves.Zip(moves.Skip(1)).Count(m => m.First != m.Second);
    }

    // A way goes square to the house: along one side, along the other, then up or down.
    private static IEnumerable<(int X, int Y, int Z)> Moves(Waypoint from, Waypoint to)
    {
        if (from.Spot.X != to.Spot.X)
        {
            yield return (Math.Sign(to.Spot.X - from.Spot.X), 0, 0);
        }

        if (from.Spot.Y != to.Spot.Y)
        {
            yield return (0, Math.Sign(to.Spot.Y - from.Spot.Y), 0);
        }

        if (from.Level != to.Level || from.Height != to.Height)
        {
            yield return (0, 0, from.Level != to.Level ? Math.Sign(to.Level - from.Level) : Math.Sign(to.Height - from.Height));
        }
    }
}
