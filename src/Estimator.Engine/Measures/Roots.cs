namespace Estimator.Engine.Measures;

/// <summary>Square roots that are the same on every machine.</summary>
public static class Roots
{
    /// <summary>Length of the straight line over two legs, all in sixteenths of an inch, rounded to the nearest.</summary>
    public static long StraightSixteenths(long dx, long dy)
    {
        if (dx == 0 || dy == 0)
        {
            return Math.Abs(dx) + Math.Abs(dy);
        }

        var square = checked((UInt128)(dx * (Int128)dx) + (UInt128)(dy * (Int128)dy));
        var root = Floor(square);
        return (long)(square - root * root > root ? root + 1 : root);
    }

    /// <summary>The whole part of a square root.</summary>
    public static int FloorOf(long square) => (int)Floor((UInt128)square);

    /// <summary>A square root to twelve places, by Newton's steps in decimal arithmetic.</summary>
    /// <param name="square">Zero or above, up to a billion.</param>
    public static decimal Of(decimal square)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(square);
        if (square == 0)
        {
            return 0;
        }

        // From above the steps only fall; where rounding ends that, the root is found.
        var guess = Math.Max(1, square);
        while (true)
        {
            var next = (guess + (square / guess)) / 2;
            if (next >= guess)
            {
                return decimal.Round(guess, 12, MidpointRounding.AwayFromZero);
            }

            guess = next;
        }
    }

    private static UInt128 Floor(UInt128 value)
    {
        if (value < 2)
        {
            return value;
        }

        var guess = UInt128.One << ((129 - (int)UInt128.LeadingZeroCount(value)) / 2 + 1);
        while (true)
        {
            var next = (guess + value / guess) / 2;
            if (next >= guess)
            {
                return guess;
            }

            guess = next;
        }
    }
}
