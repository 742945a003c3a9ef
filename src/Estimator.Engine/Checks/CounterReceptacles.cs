using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;

namespace Estimator.Engine.Checks;

/// <summary>Kitchen counters and islands have their receptacles.</summary>
/// <remarks>Source: NEC 210.52(C), islands by edition.</remarks>
internal static class CounterReceptacles
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        for (var room = 0; room < context.Layout.House.Rooms.Length; room++)
        {
            var source = context.Layout.House.Rooms[room].Source;
            var needed = source.Counters.Where(c => c.Kind is CounterKind.Wall).Sum(c => ReceptacleCounts.Counter(c.Length));
            var islands = source.Counters.Where(c => c.Kind is not CounterKind.Wall).Sum(c => ReceptacleCounts.Island(context.Edition, c.Length, c.Depth));
            foreach (var finding in Short(context, room, ServedPlace.Counter, needed, "210.52(C)(1)", "wall counters")
                .Concat(Short(context, room, ServedPlace.Island, islands, "210.52(C)(2)", "islands and peninsulas")))
            {
                yield return finding;
            }
        }
    }

    private static IEnumerable<Finding> Short(CheckContext context, int room, ServedPlace place, int needed, string article, string what)
    {
        var have = context.Layout.Devices.Count(d => d.Place.Room == room && d.Serves == place && d.Kind.IsReceptacle());
        if (have < needed)
        {
            yield return context.Asked(
                "counter-receptacles", article, $"{context.RoomName(room)}: the {what} have {have} receptacles and {needed} are asked for. Add {needed - have}.",
                [context.Layout.House.Rooms[room].Source.Id]);
        }
    }
}
