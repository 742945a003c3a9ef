using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>Kitchen counters and islands have their receptacles.</summary>
/// <remarks>Counters whose place is stated are also measured along the wall. Source: NEC 210.52(C), islands by edition.</remarks>
internal static class CounterReceptacles
{
    internal static IEnumerable<Finding> Judge(CheckContext context) => context.House.Rooms.Where(r => !r.Source.Counters.IsEmpty)
        .SelectMany(r => Counters(context, r.Index).Concat(Islands(context, r.Index)).Concat(Provision(context, r.Index)));

    private static IEnumerable<Finding> Counters(CheckContext context, int room)
    {
        var walls = context.House.Rooms[room].Source.Counters.Where(c => c.Kind is CounterKind.Wall).ToList();
        if (walls.Count == 0 || context.Rule("counter-receptacles") is not { } rule)
        {
            yield break;
        }

        var needed = walls.Sum(c => ReceptacleCounts.Counter(c.Length));
        var have = Serving(context, room, ServedPlace.Counter);
        foreach (var finding in context.Ask(rule, have >= needed, () => $"{context.RoomName(room)}: the wall counters have {have} receptacles and {needed} are asked for. Add {needed - have}.", [context.House.Rooms[room].Source.Id]))
        {
            yield return finding;
        }

        if (have >= needed)
        {
            foreach (var finding in walls.Where(c => c.Wall is not null).SelectMany(c => Along(context, room, c, rule)))
            {
                yield return finding;
            }
        }
    }

    // No point along the wall line farther than half the distance between from a receptacle.
    private static IEnumerable<Finding> Along(CheckContext context, int room, Counter counter, CodeRule rule)
    {
        var framed = context.House.Rooms[room];
        if (ReceptacleCounts.Counter(counter.Length) == 0)
        {
            yield break;
        }

        var space = WallSpaces.OfCounter(context.House, framed, counter.Wall!, counter.Length);
        var gap = ReceptacleSpacing.WidestGap(space, ReceptacleSpacing.Along(framed, space, context.In(room).Where(d => d.Kind.IsReceptacle() && d.Serves is ServedPlace.Counter)));
        var most = ReceptacleRules.CounterBetween.Inches().ToSixteenths();
        if (gap > most)
        {
            yield return context.Asked(
                rule, $"{context.RoomName(room)}: a point of the counter of {counter.Length} is {Measures.Length.FromSixteenths(gap / 2)} from a receptacle; {Measures.Length.FromSixteenths(most / 2)} is the most. Add a receptacle there.",
                [framed.Source.Id]);
        }
    }

    private static IEnumerable<Finding> Islands(CheckContext context, int room)
    {
        var islands = Free(context, room);
        if (islands.Count == 0 || context.Rule("island-receptacles") is not { } rule)
        {
            return [];
        }

        var needed = islands.Sum(c => ReceptacleCounts.Island(context.Edition, c.Length, c.Depth));
        var have = Serving(context, room, ServedPlace.Island);
        return context.Ask(rule, have >= needed, () => $"{context.RoomName(room)}: the islands and peninsulas have {have} receptacles and {needed} are asked for. Add {needed - have}.", [context.House.Rooms[room].Source.Id]);
    }

    private static IEnumerable<Finding> Provision(CheckContext context, int room) =>
        Free(context, room).Count == 0 || context.Rule("island-provision") is not { } rule
            ? []
            : context.Ask(
                rule, Serving(context, room, ServedPlace.Island) > 0,
                () => $"{context.RoomName(room)} has an island or peninsula without a receptacle. None is asked for, but provision for a later one is{(context.Edition is CodeEdition.Nec2026 ? ", and it must be an electrical one" : "")}: bring a cable there, or put a receptacle on or above its top.",
                [context.House.Rooms[room].Source.Id], Severity.Advice);

    private static List<Counter> Free(CheckContext context, int room) => [.. context.House.Rooms[room].Source.Counters.Where(c => c.Kind is not CounterKind.Wall)];

    private static int Serving(CheckContext context, int room, ServedPlace place) => context.In(room).Count(d => d.Serves == place && d.Kind.IsReceptacle());
}
