using System.Collections.Immutable;

namespace Estimator.Web.Plans;

/// <summary>What of a run lies on a sheet.</summary>
/// <param name="Run">Index of the run in the wiring.</param>
/// <param name="Circuit">Index of its circuit.</param>
/// <param name="Number">Circuit and place in it, such as 2.5.</param>
/// <param name="HomeRun">Whether it starts at a panel.</param>
/// <param name="Parts">Its lines on this level; a part of one point is a rise or drop there.</param>
/// <param name="Risers">Where it goes to another level.</param>
public sealed record DrawnRun(int Run, int Circuit, string Number, bool HomeRun, ImmutableArray<ImmutableArray<SheetPoint>> Parts, ImmutableArray<DrawnRiser> Risers)
{
    /// <summary>The middle of its longest line.</summary>
    public SheetPoint Middle
    {
        get
        {
            var (from, to) = Parts.SelectMany(p => p.Zip(p.Skip(1))).DefaultIfEmpty((Parts[0][0], Parts[0][0])).MaxBy(s => s.Item1.DistanceTo(s.Item2));
            return from.Middle(to);
        }
    }
}
