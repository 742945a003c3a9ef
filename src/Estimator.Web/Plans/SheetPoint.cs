namespace Estimator.Web.Plans;

/// <summary>A point of the drawn sheet, in feet: x to the right, y down, from the upper left corner of the house.</summary>
/// <param name="X">Feet to the right.</param>
/// <param name="Y">Feet down.</param>
public readonly record struct SheetPoint(double X, double Y)
{
    /// <summary>The point so far along a direction.</summary>
    public SheetPoint Along(SheetPoint direction, double feet) => new(X + direction.X * feet, Y + direction.Y * feet);

    /// <summary>Straight distance, in feet.</summary>
    public double DistanceTo(SheetPoint other) => Math.Sqrt((X - other.X) * (X - other.X) + (Y - other.Y) * (Y - other.Y));

    /// <summary>The direction to another point, one foot long; nothing where both are the same.</summary>
    public SheetPoint DirectionTo(SheetPoint other)
    {
        var distance = DistanceTo(other);
        return distance == 0 ? default : new SheetPoint((other.X - X) / distance, (other.Y - Y) / distance);
    }

    /// <summary>The point half way.</summary>
    public SheetPoint Middle(SheetPoint other) => new((X + other.X) / 2, (Y + other.Y) / 2);
}
