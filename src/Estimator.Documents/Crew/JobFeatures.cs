using System.Globalization;
using Estimator.Engine;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Documents.Crew;

/// <summary>What is in a job that a crew brings tools and consumables for, counted, by the words of the table of the crew's kit.</summary>
internal sealed class JobFeatures
{
    private static readonly Length High = Length.FromFeet(9);

    private readonly Dictionary<string, (decimal Count, string Words)> _found = new(StringComparer.Ordinal);

    internal JobFeatures(JobEstimate estimate)
    {
        var (wiring, layout, job) = (estimate.Wiring, estimate.Layout, estimate.House.Job);
        _found["always"] = (1, "every job");
        Runs(estimate);
        Put("bores", Taken(estimate, "bore"), "bored hole", "bored holes");
        Put("old_work", wiring.Boxes.Count(b => b.OldWork), "box cut into a finished wall", "boxes cut into finished walls");
        Put("new_boxes", wiring.Boxes.Count(b => b.Item is not null && !b.OldWork), "box set before the walls close", "boxes set before the walls close");
        Put("weatherproof", wiring.Boxes.Count(b => b.Use is BoxUse.Weatherproof), "weatherproof box", "weatherproof boxes");
        Put("finished_rooms", estimate.House.Rooms.Count(r => r.Source.Walls is WallState.Finished), "room with finished walls", "rooms with finished walls");
        Put("recessed_finished", layout.Devices.Count(d => d.Kind is DeviceKind.RecessedLight && estimate.House.Rooms[d.Place.Room].Source.Walls is WallState.Finished), "recessed light in a finished ceiling", "recessed lights in finished ceilings");
        Put("ceiling_work", layout.Devices.Count(d => d.Place.Mount is Mount.Ceiling), "device on a ceiling", "devices on ceilings");
        Put("high_work", layout.Devices.Count(d => d.Place.Mount is Mount.Ceiling && estimate.House.Rooms[d.Place.Room].CeilingHeight.AsLength().Value > High), "device above 9 ft", "devices above 9 ft");
        Put("crawl_work", estimate.House.Rooms.Count(r => r.Source.Kind is RoomKind.Crawl or RoomKind.Attic) + wiring.Runs.Count(r => r.Path.Way is RunWay.Underfloor), "attic, crawl space or run under a floor", "attics, crawl spaces or runs under a floor");
        Put("alarms", layout.Devices.Count(d => d.Kind.IsAlarm()), "alarm", "alarms");
        Put("receptacles", layout.Devices.Count(d => d.Kind.IsReceptacle()), "receptacle", "receptacles");
        Put("circuits", wiring.Circuits.Length, "circuit", "circuits");
        Put("breakers", wiring.Circuits.Count(c => c.BreakerPoles > 0), "breaker", "breakers");
        Put("existing_panel", job.Panels.Count(p => p.Existing), "panel that is there already", "panels that are there already");
        Put("service", job.Service is null ? 0 : 1, "service that is worked on", "service that is worked on");
        Put("ground_rods", estimate.Takeoff.Lines.Where(l => l.ItemId == "ground-rod").Sum(l => l.Quantity.Value), "ground rod", "ground rods");
        Put("aluminium", wiring.Feeders.Count(f => f.Metal is ConductorMetal.Aluminium) + (job.Service?.Metal is ConductorMetal.Aluminium ? 1 : 0), "feeder or service of aluminium", "feeders or services of aluminium");
    }

    /// <summary>How many there are; zero where the job has none.</summary>
    internal decimal Count(string feature) => _found.TryGetValue(feature, out var found) ? found.Count : 0;

    /// <summary>Why something is brought.</summary>
    internal string Words(string feature) => _found.TryGetValue(feature, out var found) ? found.Words : "";

    private void Runs(JobEstimate estimate)
    {
        var wiring = estimate.Wiring;
        Put("nm_b", wiring.Runs.Count(r => r.Cable.Method is WiringMethod.NmB), "run of NM-B cable", "runs of NM-B cable");
        Put("mc", wiring.Runs.Count(r => r.Cable.Method is WiringMethod.Mc), "run of MC cable", "runs of MC cable");
        Put("emt", wiring.Runs.Count(r => r.Cable.Method is WiringMethod.Emt) + wiring.Feeders.Count(f => f.Method is WiringMethod.Emt), "run in EMT", "runs in EMT");
        Put("pvc", wiring.Runs.Count(r => r.Cable.Method is WiringMethod.BuriedConduit) + wiring.Feeders.Count(f => f.Method is WiringMethod.BuriedConduit), "run in PVC conduit", "runs in PVC conduit");
        Put("raceway", Count("emt") + Count("pvc"), "run in conduit", "runs in conduit");
        Put("cut_cable", estimate.Takeoff.Pieces.Length, "piece of cable", "pieces of cable");
        Put("trench", wiring.Runs.Count(r => r.Path.Trench is not null) + wiring.Feeders.Count(f => f.Path.Trench is not null) + (estimate.House.Job.Service?.Trench is null ? 0 : 1), "run underground", "runs underground");
        Put("fished", wiring.Runs.Count(r => r.Fished) + wiring.Feeders.Count(f => f.Fished), "run fished through a finished wall", "runs fished through finished walls");
        Put("large_cable", wiring.Runs.Count(r => r.Cable.Size > WireSize.Awg10) + wiring.Feeders.Length, "run thicker than 10 AWG", "runs thicker than 10 AWG");
        Put("plate_holes", wiring.Runs.Count(r => r.Path.Way is RunWay.Overhead or RunWay.Underfloor), "run through a plate or floor", "runs through plates or floors");
        Put("marked_whites", wiring.Runs.Sum(r => r.Conductors.Count(c => c.ReMarked)), "white conductor that is hot", "white conductors that are hot");
    }

    private void Put(string feature, decimal count, string one, string many)
    {
        if (count > 0)
        {
            _found[feature] = (count, string.Create(CultureInfo.InvariantCulture, $"{count:#,0} {(count == 1 ? one : many)}"));
        }
    }

    private static decimal Taken(JobEstimate estimate, string category) => estimate.Takeoff.Lines.Where(l => l.Category == category).Sum(l => l.Quantity.Value);
}
