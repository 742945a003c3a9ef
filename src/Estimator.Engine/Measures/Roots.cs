namespace Estimator.Engine.Measures;

/// <summary>Whole-number square roots, the same on every machine.</summary>
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
