using Estimator.Engine.Framing;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Layout;

/// <summary>Length of a hallway on its centre line.</summary>
/// <remarks>Taken as half the perimeter less the mean width, so that an L-shaped hall counts both legs; our reading of NEC 210.52(H).</remarks>
public static class HallLength
{
    /// <summary>The length.</summary>
    public static Length Of(FramedRoom room)
    {
        var perimeter = Polygons.Perimeter(room.Corners);
        var area = Int128.Abs(Polygons.DoubleArea(room.Corners)) / 2;
        var half = perimeter / 2;
        var root = Roots.FloorOf(Math.Max(0, half * half - 4 * (long)area));
        return Length.FromSixteenths((half + root) / 2);
    }
}
