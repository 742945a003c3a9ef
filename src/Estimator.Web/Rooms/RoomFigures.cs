using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Web.Explanations;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;
using Estimator.Web.Symbols;

namespace Estimator.Web.Rooms;

/// <summary>Openings and cable of each room, with their explanations.</summary>
public sealed class RoomFigures
{
    private const int PageNumber = FigurePages.Rooms;
    private readonly Dictionary<string, (Fact Openings, Fact Cable)> _rooms = new(StringComparer.Ordinal);

    private RoomFigures(PricedJob priced)
    {
        var page = new PageWriter(PageNumber);
        var estimate = priced.Estimate;
        foreach (var framed in estimate.House.Rooms)
        {
            var room = framed.Source;
            var openings = page.Sum("room-openings", "Openings of the room", Unit.Each, [.. Devices(page, priced.Job, room)]);
            var runs = estimate.Wiring.Runs.Where(r => estimate.Wiring.Boxes[r.To].Place.Room == framed.Index).Select(r => r.Total).ToList();
            var cable = page.Sum("room-cable", "Runs that end in the room", Unit.Length, runs);
            _rooms[room.Id] = (openings, page.Compute(Operation.InFeet, "room-cable", "Cable of the room", Unit.Feet, cable));
        }

        Openings = page.Sum("openings", "Openings", Unit.Each, [.. _rooms.Values.Select(r => r.Openings)]);
        Source = new FigureSource(new ExplanationBook(priced.Source.Book.Pages.Append(page.ToPage())), priced.Job);
    }

    /// <summary>Openings of all rooms.</summary>
    public Fact Openings { get; }

    /// <summary>What these figures are explained from.</summary>
    public FigureSource Source { get; }

    /// <summary>The figures of an estimate.</summary>
    public static RoomFigures Of(PricedJob priced) => new(priced);

    /// <summary>Openings and cable of a room; null for a room that the estimate does not know yet.</summary>
    public (Fact Openings, Fact Cable)? Room(string id) => _rooms.TryGetValue(id, out var figures) ? figures : null;

    private static ImmutableArray<Fact> Devices(PageWriter page, Job job, Room room)
    {
        for (var l = 0; l < job.Levels.Length; l++)
        {
            for (var r = 0; r < job.Levels[l].Rooms.Length; r++)
            {
                if (job.Levels[l].Rooms[r].Id == room.Id)
                {
                    var counts = room.Counts.Select((c, i) => page.Given($"$.levels[{l}].rooms[{r}].counts[{i}].count", $"{DeviceSign.Of(c.Kind).Short}", c.Count, Unit.Each));
                    var placed = room.Placed.Select((p, i) => page.Given($"$.levels[{l}].rooms[{r}].placed[{i}]", DeviceSign.Of(p.Kind).Short, 1, Unit.Each));
                    return [.. counts, .. placed];
                }
            }
        }

        return [];
    }
}
