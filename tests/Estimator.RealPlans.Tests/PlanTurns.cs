using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.RealPlans.Tests;

/// <summary>The same plan, drawn or listed in another way.</summary>
internal static class PlanTurns
{
    private static readonly Length Away = Length.FromFeet(100);

    internal static Job Moved(Job job) => Each(job, p => new GridPoint(p.X + Length.FromInches(777), p.Y - Length.FromInches(333)));

    internal static Job Turned(Job job) => Each(job, p => new GridPoint(Away - p.Y, p.X));

    internal static Job Mirrored(Job job) => Each(job, p => new GridPoint(Away - p.X, p.Y));

    internal static Job Shuffled(Job job) => job with
    {
        Levels = [.. job.Levels.Reverse().Select(l => l with { Rooms = [.. l.Rooms.Reverse().Select(r => r with { Counts = [.. r.Counts.Reverse()] })], Openings = [.. l.Openings.Reverse()] })],
    };

    private static Job Each(Job job, Func<GridPoint, GridPoint> turn) => job with
    {
        Levels = [.. job.Levels.Select(l => l with
        {
            Rooms = [.. l.Rooms.Select(r => r with
            {
                Corners = [.. r.Corners.Select(turn)],
                Holes = [.. r.Holes.Select(h => (System.Collections.Immutable.ImmutableArray<GridPoint>)[.. h.Select(turn)])],
                Fixtures = [.. r.Fixtures.Select(f => f with { At = f.At is { } at ? turn(at) : null })],
            })],
            Openings = [.. l.Openings.Select(o => o with { At = o.At is { } at ? turn(at) : null })],
        })],
    };
}
