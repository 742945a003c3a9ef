using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Takeoff;

/// <summary>Says where each device is set and each cable is pulled, for labor.</summary>
internal sealed class WorkPlaces(HouseLayout layout, WiringPlan wiring, PageWriter page)
{
    private readonly ImmutableHashSet<string> _repeated = RepeatedRooms.Of(layout.House.Job);

    /// <summary>Where the devices of a box are set.</summary>
    internal WorkPlace Of(Box box) => new(box.OldWork, Build(box.Place), _repeated.Contains(Room(box.Place).Id), TightSpace.None);

    /// <summary>Cable out of the ordinary, by item and place.</summary>
    internal ImmutableArray<PlacedCable> Cables() =>
    [
        .. wiring.Runs.Select(r => (r.Cable.ItemId, Place: Of(r), r.Total))
            .Concat(wiring.Feeders.Where(f => f.Fished && RunMethods.Raceway(f.Method) is null).Select(f => (f.ItemId, Place: new WorkPlace(true, WallBuild.WoodStuds, false, TightSpace.None), f.Total)))
            .Where(r => !r.Place.Plain).GroupBy(r => (r.ItemId, r.Place)).OrderBy(g => g.Key.ItemId, StringComparer.Ordinal).ThenBy(g => g.Key.Place.Order)
            .Select(g => new PlacedCable(g.Key.ItemId, g.Key.Place, InFeet(g.Key.Place.Fished, [.. g.Select(r => r.Total)]))),
    ];

    private Fact InFeet(bool fished, IReadOnlyList<Fact> lengths)
    {
        var (rule, label) = fished ? ("fished", "Cable fished in finished walls") : ("slow-cable", "Cable in places that slow the work");
        return page.Compute(Operation.InFeet, $"{rule}-feet", label, Unit.Feet, page.Sum(rule, label, Unit.Length, lengths));
    }

    // A fished run is as hard as the finished room at its end; the other end counts where that one is open.
    private WorkPlace Of(Run run)
    {
        var end = wiring.Boxes[run.To].Place;
        if (run.Fished && run.From >= 0 && Room(end).Walls is WallState.Open)
        {
            end = wiring.Boxes[run.From].Place;
        }

        return new WorkPlace(run.Fished, Build(end), false, Through(run.Path.Way, layout.House.Levels[wiring.Boxes[run.To].Place.Level].Source.Framing));
    }

    private static TightSpace Through(RunWay way, LevelFraming framing) => way switch
    {
        RunWay.Overhead when framing.TightAttic => TightSpace.Attic,
        RunWay.Underfloor when framing.CrawlHeight is { } height => height < LaborFactors.LowCrawl.Feet("under_ft") ? TightSpace.LowCrawl : TightSpace.Crawl,
        _ => TightSpace.None,
    };

    private WallBuild Build(Placement place) => place.Mount is Mount.Wall ? Room(place).WallBuild ?? WallBuild.WoodStuds : WallBuild.WoodStuds;

    private Room Room(Placement place) => layout.House.Rooms[place.Room].Source;
}
