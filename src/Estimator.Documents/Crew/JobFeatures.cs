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

    private static readonly Dictionary<string, string> Singular = new(StringComparer.Ordinal)
    {
        ["holes"] = "hole",
        ["boxes"] = "box",
        ["rooms"] = "room",
        ["lights"] = "light",
        ["devices"] = "device",
        ["alarms"] = "alarm",
        ["receptacles"] = "receptacle",
        ["circuits"] = "circuit",
        ["breakers"] = "breaker",
        ["panels"] = "panel",
        ["are"] = "is",
        ["rods"] = "rod",
        ["feeders"] = "feeder",
        ["runs"] = "run",
        ["pieces"] = "piece",
        ["conductors"] = "conductor",
        ["services"] = "service",
        ["spaces"] = "space",
        ["attics"] = "attic",
    };

    private readonly Dictionary<string, (decimal Count, string Words)> _found = new(StringComparer.Ordinal);

    internal JobFeatures(JobEstimate estimate)
    {
        var (wiring, layout, job) = (estimate.Wiring, estimate.Layout, estimate.House.Job);
        _found["always"] = (1, "every job");
        Runs(estimate);
        Put("bores", Taken(estimate, "bore"), "bored holes");
        Put("old_work", wiring.Boxes.Count(b => b.OldWork), "boxes cut into finished walls");
        Put("new_boxes", wiring.Boxes.Count(b => b.Item is not null && !b.OldWork), "boxes set before the walls close");
        Put("weatherproof", wiring.Boxes.Count(b => b.Use is BoxUse.Weatherproof), "weatherproof boxes");
        Put("finished_rooms", estimate.House.Rooms.Count(r => r.Source.Walls is WallState.Finished), "rooms with finished walls");
        Put("recessed_finished", layout.Devices.Count(d => d.Kind is DeviceKind.RecessedLight && estimate.House.Rooms[d.Place.Room].Source.Walls is WallState.Finished), "recessed lights in finished ceilings");
        Put("ceiling_work", layout.Devices.Count(d => d.Place.Mount is Mount.Ceiling), "devices on ceilings");
        Put("high_work", layout.Devices.Count(d => d.Place.Mount is Mount.Ceiling && estimate.House.Rooms[d.Place.Room].CeilingHeight.AsLength().Value > High), "devices above 9 ft");
        Put("crawl_work", estimate.House.Rooms.Count(r => r.Source.Kind is RoomKind.Crawl or RoomKind.Attic) + wiring.Runs.Count(r => r.Path.Way is RunWay.Underfloor), "attics, crawl spaces or runs under a floor");
        Put("alarms", layout.Devices.Count(d => d.Kind.IsAlarm()), "alarms");
        Put("receptacles", layout.Devices.Count(d => d.Kind.IsReceptacle()), "receptacles");
        Put("circuits", wiring.Circuits.Length, "circuits");
        Put("breakers", wiring.Circuits.Count(c => c.BreakerPoles > 0), "breakers");
        Put("existing_panel", job.Panels.Count(p => p.Existing), "panels that are there already");
        Put("service", job.Service is null ? 0 : 1, "service that is worked on");
        Put("ground_rods", estimate.Takeoff.Lines.Where(l => l.ItemId == "ground-rod").Sum(l => l.Quantity.Value), "ground rods");
        Put("aluminium", wiring.Feeders.Count(f => f.Metal is ConductorMetal.Aluminium) + (job.Service?.Metal is ConductorMetal.Aluminium ? 1 : 0), "feeders or services of aluminium");
    }

    /// <summary>How many there are; zero where the job has none.</summary>
    internal decimal Count(string feature) => _found.TryGetValue(feature, out var found) ? found.Count : 0;

    /// <summary>Why something is brought.</summary>
    internal string Words(string feature) => _found.TryGetValue(feature, out var found) ? found.Words : "";

    private void Runs(JobEstimate estimate)
    {
        var wiring = estimate.Wiring;
        Put("nm_b", wiring.Runs.Count(r => r.Cable.Method is WiringMethod.NmB), "runs of NM-B cable");
        Put("mc", wiring.Runs.Count(r => r.Cable.Method is WiringMethod.Mc), "runs of MC cable");
        Put("emt", wiring.Runs.Count(r => r.Cable.Method is WiringMethod.Emt) + wiring.Feeders.Count(f => f.Method is WiringMethod.Emt), "runs in EMT");
        Put("pvc", wiring.Runs.Count(r => r.Cable.Method is WiringMethod.BuriedConduit) + wiring.Feeders.Count(f => f.Method is WiringMethod.BuriedConduit), "runs in PVC conduit");
        Put("raceway", Count("emt") + Count("pvc"), "runs in conduit");
        Put("cut_cable", estimate.Takeoff.Pieces.Length, "pieces of cable");
        Put("trench", wiring.Runs.Count(r => r.Path.Trench is not null) + wiring.Feeders.Count(f => f.Path.Trench is not null) + (estimate.House.Job.Service?.Trench is null ? 0 : 1), "runs underground");
        Put("fished", wiring.Runs.Count(r => r.Fished) + wiring.Feeders.Count(f => f.Fished), "runs fished through finished walls");
        Put("large_cable", wiring.Runs.Count(r => r.Cable.Size > WireSize.Awg10) + wiring.Feeders.Length, "runs thicker than 10 AWG");
        Put("plate_holes", wiring.Runs.Count(r => r.Path.Way is RunWay.Overhead or RunWay.Underfloor), "runs through plates or floors");
        Put("marked_whites", wiring.Runs.Sum(r => r.Conductors.Count(c => c.ReMarked)), "white conductors that are hot");
    }

    private void Put(string feature, decimal count, string words)
    {
        if (count > 0)
        {
            _found[feature] = (count, string.Create(CultureInfo.InvariantCulture, $"{count:#,0} {(count == 1 ? One(words) : words)}"));
        }
    }

    private static string One(string words) => string.Join(' ', words.Split(' ').Select(w => Singular.GetValueOrDefault(w, w)));

    private static decimal Taken(JobEstimate estimate, string category) => estimate.Takeoff.Lines.Where(l => l.Category == category).Sum(l => l.Quantity.Value);
}
