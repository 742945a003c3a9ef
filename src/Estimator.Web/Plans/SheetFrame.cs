using Estimator.Engine.Framing;
using Estimator.Engine.Measures;

namespace Estimator.Web.Plans;

/// <summary>How a house lies on the drawn sheets: as the user drew it, all levels over one another, so that a grid letter means the same place on each.</summary>
public sealed class SheetFrame
{
    private const double Sixteenths = 192;
    private const double MarginDots = 50;
    private const double FitWidthDots = 900;
    private const double FitHeightDots = 640;
    private const double FinestDot = 1 / 26.0;
    private const double CoarsestDot = 1 / 14.0;

    private readonly Pose _pose;
    private readonly int _left;
    private readonly int _top;

    /// <summary>The frame of a house; a house without rooms has an empty one.</summary>
    public SheetFrame(FramedHouse house)
    {
        _pose = house.Pose;
        var corners = house.Rooms.SelectMany(r => r.Corners).Select(_pose.ToGrid).DefaultIfEmpty(default).ToList();
        (_left, _top) = (corners.Min(c => c.X), corners.Max(c => c.Y));
        Across = Length.FromSixteenths(corners.Max(c => c.X) - _left);
        Deep = Length.FromSixteenths(_top - corners.Min(c => c.Y));
        (Width, Height) = ((double)Across.ToFeet(), (double)Deep.ToFeet());
        Dot = Math.Clamp(Math.Max(Width / FitWidthDots, Height / FitHeightDots), FinestDot, CoarsestDot);
    }

    /// <summary>Greatest width inside the rooms, as people read it.</summary>
    public Length Across { get; }

    /// <summary>Greatest depth inside the rooms, as people read it.</summary>
    public Length Deep { get; }

    /// <summary>Width of the house, in feet.</summary>
    public double Width { get; }

    /// <summary>Depth of the house, in feet.</summary>
    public double Height { get; }

    /// <summary>About a screen's dot when the whole level is in sight, in feet. Letters and signs are sized by it, lines of the house are not.</summary>
    public double Dot { get; }

    /// <summary>Room for grid letters and sizes round the house, in feet.</summary>
    public double Margin => MarginDots * Dot;

    /// <summary>Side of a device's sign, in feet.</summary>
    public double Sign => 23 * Dot;

    /// <summary>The point of the sheet.</summary>
    /// <param name="canonical">A point in canonical pose.</param>
    public SheetPoint Point(PlanPoint canonical)
    {
        var grid = _pose.ToGrid(canonical);
        return new SheetPoint((grid.X - _left) / Sixteenths, (_top - grid.Y) / Sixteenths);
    }

    /// <summary>The point of the sheet for a point between sixteenths, in feet of the canonical pose.</summary>
    public SheetPoint Point(double x, double y)
    {
        var (origin, east, north) = (Point(default), Point(new PlanPoint((int)Sixteenths, 0)), Point(new PlanPoint(0, (int)Sixteenths)));
        return new SheetPoint(
            origin.X + x * (east.X - origin.X) + y * (north.X - origin.X), origin.Y + x * (east.Y - origin.Y) + y * (north.Y - origin.Y));
    }

    /// <summary>Where a point lies by the letters and numbers at the sheet's edge, such as D3.</summary>
    public string Zone(SheetPoint point) => SheetGrid.Of(this).Zone(point);
}
