namespace Estimator.Engine.Measures;

/// <summary>A point of the plan in whole sixteenths of an inch, as the optimisers use it. Ordered by x, then y.</summary>
/// <param name="X">Sixteenths of an inch along x.</param>
/// <param name="Y">Sixteenths of an inch along y.</param>
public readonly record struct PlanPoint(int X, int Y) : IComparable<PlanPoint>
{
    /// <summary>Square-cornered distance, in sixteenths of an inch.</summary>
    public int SquareDistanceTo(PlanPoint other) => checked(Math.Abs(X - other.X) + Math.Abs(Y - other.Y));

    /// <summary>Straight distance, in sixteenths of an inch, rounded to the nearest.</summary>
    public int StraightDistanceTo(PlanPoint other) => checked((int)Roots.StraightSixteenths(X - other.X, Y - other.Y));

    /// <inheritdoc/>
    public int CompareTo(PlanPoint other) => X != other.X ? X.CompareTo(other.X) : Y.CompareTo(other.Y);

    /// <summary>Whether the first comes before.</summary>
    public static bool operator <(PlanPoint a, PlanPoint b) => a.CompareTo(b) < 0;

    /// <summary>Whether the first comes after.</summary>
    public static bool operator >(PlanPoint a, PlanPoint b) => a.CompareTo(b) > 0;

    /// <summary>Whether the first does not come after.</summary>
    public static bool operator <=(PlanPoint a, PlanPoint b) => a.CompareTo(b) <= 0;

    /// <summary>Whether the first does not come before.</summary>
    public static bool operator >=(PlanPoint a, PlanPoint b) => a.CompareTo(b) >= 0;
}
