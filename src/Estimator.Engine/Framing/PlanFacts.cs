using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Framing;

/// <summary>Finds the user's figures for a spot of the plan.</summary>
internal static class PlanFacts
{
    /// <summary>Coordinates of a spot that is a corner or one of the ends, or where the line of one of these crosses that of another.</summary>
    internal static (Fact X, Fact Y) At(FramedHouse house, PlanPoint spot, IEnumerable<(Fact X, Fact Y)> ends)
    {
        var grid = house.Pose.ToGrid(spot);
        (Fact X, Fact Y)[] known = [.. ends, .. house.Rooms.SelectMany(r => r.CornerFacts), .. house.Rooms.SelectMany(r => r.HoleFacts).SelectMany(h => h)];
        var (x, y) = (Length.FromSixteenths(grid.X).ToNanometres(), Length.FromSixteenths(grid.Y).ToNanometres());
        var both = known.FirstOrDefault(k => k.X.Value == x && k.Y.Value == y);
        return both.X.Unit is Unit.Length ? both : (known.First(k => k.X.Value == x).X, known.First(k => k.Y.Value == y).Y);
    }
}
