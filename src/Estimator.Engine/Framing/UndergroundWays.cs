using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Framing;

/// <summary>Ways from one building to another: to the trench by the shorter of the ways along walls and overhead, through it, and on alike.</summary>
internal sealed class UndergroundWays(FramingMap map, Trenches trenches)
{
    /// <summary>The length between two places of different buildings.</summary>
    internal WayLength LengthOf(Placement a, Placement b)
    {
        var trench = trenches.Between(a.Room, b.Room)!;
        var (from, to) = (Inside(a, trench.From).Length, Inside(trench.To, b).Length);
        return new WayLength(from.Horizontal + trench.Length + to.Horizontal, from.Vertical + to.Vertical, from.Bores + to.Bores + (int)BurialRules.WallHoles.Number());
    }

    /// <summary>The way with its turns and its explained lengths.</summary>
    internal RunPath PathFor(Placement a, Placement b, PageWriter page)
    {
        var trench = trenches.Explained(trenches.Between(a.Room, b.Room)!, page);
        var (from, to) = (map.PathFor(a, trench.From, Inside(a, trench.From).Way, page), map.PathFor(trench.To, b, Inside(trench.To, b).Way, page));
        var dug = trenches.LengthOf(trench, page);
        return new RunPath
        {
            Way = RunWay.Underground,
            Turns = [.. from.Turns, .. to.Turns],
            Horizontal = page.Compute(Operation.Sum, "way-horizontal", "Through both buildings and the trench", Unit.Length, from.Horizontal, dug, to.Horizontal),
            Vertical = page.Compute(Operation.Sum, "way-rises", "Rises and drops in both buildings", Unit.Length, from.Vertical, to.Vertical),
            AlongMembers = page.Compute(Operation.Sum, "way-along", "Part of the way along members", Unit.Length, from.AlongMembers, to.AlongMembers),
            Bores = page.Compute(Operation.Sum, "way-bores", "Holes to bore", Unit.Each, from.Bores, to.Bores, BurialRules.WallHoles.Read(page, Unit.Each)),
            Trench = dug,
            Bridged = from.Bridged || to.Bridged,
        };
    }

    private (RunWay Way, WayLength Length) Inside(Placement a, Placement b)
    {
        map.TryWay(a, b, RunWay.Overhead, out var over);
        return map.TryWay(a, b, RunWay.AlongWalls, out var along) && along.Horizontal + along.Vertical < over.Horizontal + over.Vertical ? (RunWay.AlongWalls, along) : (RunWay.Overhead, over);
    }
}
