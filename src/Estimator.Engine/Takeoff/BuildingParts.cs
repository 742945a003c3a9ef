using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring;
using Estimator.Engine.Wiring.Feeders;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.Engine.Takeoff;

/// <summary>Counts what the supply of a building that stands apart takes: the trench, once for all that lies in it, sleeves, disconnect, electrodes.</summary>
/// <remarks>Source: NEC 225.31, 250.32(A), 300.5(D)(1), from memory; lengths are common practice, no source.</remarks>
internal sealed class BuildingParts(HouseLayout layout, WiringPlan wiring, LineCollecting lines, PageWriter page)
{
    private Job Job => layout.House.Job;

    internal ImmutableArray<Finding> Add()
    {
        ImmutableArray<Building> supplied = [.. Job.Buildings.Where(Supply)];
        IEnumerable<Finding> assumed = supplied.Where(b => b.Trench is null && layout.House.Rooms.Any(r => r.Arranged && r.Source.Building == b.Id)).Select(Assumed);
        if (!lines.Has("trench"))
        {
            return [.. assumed];
        }

        lines.AddOne("buried-lines-marked", "Once for the site", "job");
        return [DigSafely(), .. assumed];
    }

    private bool Supply(Building building)
    {
        var runs = wiring.Runs.Where(r => r.Path.Trench is not null && Joins(building, FromRoom(r), wiring.Boxes[r.To].Place.Room)).ToList();
        var feeders = wiring.Feeders.Where(f => f.Path.Trench is not null && Joins(building, RoomOf(f.From), RoomOf(f.To))).ToList();
        if (runs.Select(r => r.Path).Concat(feeders.Select(f => f.Path)).FirstOrDefault()?.Trench is not { } trench)
        {
            return false;
        }

        Supply(building, trench, runs, feeders);
        return true;
    }

    private void Supply(Building building, Fact trench, List<Run> runs, List<Feeder> feeders)
    {
        lines.Add("trench", page.Compute(Operation.Because, "trench", $"Trench to {building.Called()}, to its depth", Unit.Length, trench, BurialRules.Cover(Job, building).ReadInches(page)), building.Id);
        foreach (var run in runs.Where(r => r.Cable.Method is WiringMethod.Uf))
        {
            Sleeves(run.Cable.Size, building);
        }

        foreach (var feeder in feeders.Where(f => f.Method is WiringMethod.Uf))
        {
            Sleeves(feeder.Wire, building);
        }

        var fed = feeders.Where(f => layout.House.Rooms[RoomOf(f.To)].Source.Building == building.Id).ToList();
        foreach (var feeder in fed)
        {
            Electrodes(feeder, building);
        }

        if (fed.Count == 0)
        {
            lines.AddOne("building-disconnect", "Disconnect of the building, 225.31", building.Id);
        }
    }

    // Cable is guarded where it comes out of the ground, at both walls.
    private void Sleeves(WireSize size, Building building)
    {
        var sleeve = BurialRules.Sleeve(size).Text();
        lines.Add(sleeve, AtBothEnds("Conduit where cable comes out of the ground", BurialRules.SleeveFeet.ReadFeet(page), Unit.Length), building.Id);
        lines.Add($"{sleeve}-strap", AtBothEnds("Straps of that conduit", BurialRules.SleeveStraps.Read(page, Unit.Each), Unit.Each), building.Id);
        lines.Add($"{sleeve}-body", AtBothEnds("Conduit bodies at the walls", BurialRules.SleeveBodies.Read(page, Unit.Each), Unit.Each), building.Id);
    }

    private Fact AtBothEnds(string label, Fact each, Unit unit) => page.Compute(Operation.Product, "trench-ends", label, unit, each, BurialRules.Ends.Read(page, Unit.Each));

    private void Electrodes(Feeder feeder, Building building)
    {
        lines.Add("ground-rod", TakeoffRules.GroundRods.Read(page, Unit.Each), building.Id);
        lines.Add($"electrode-conductor-{ElectrodeConductors.ToRods(feeder.Wire, feeder.Metal).ToString().Replace('/', '_')}", TakeoffRules.ElectrodeConductor.ReadFeet(page), building.Id);
        if (building.DisconnectOutdoors)
        {
            var item = feeder.BreakerA.Value <= BurialRules.PanelLeast(int.MaxValue).Number() ? "equipment-disconnect" : $"emergency-disconnect-{ServicePartRules.Disconnect(feeder.BreakerA.Value)}";
            lines.AddOne(item, "Disconnect on the outside of the building", building.Id);
            lines.AddOne("disconnect-label", "Label of the disconnect", building.Id);
        }
    }

    private bool Joins(Building building, int from, int to) => (layout.House.Rooms[to].Source.Building ?? layout.House.Rooms[from].Source.Building) == building.Id;

    private int FromRoom(Run run) => run.From < 0 ? layout.Panels[wiring.Circuits[run.Circuit].Panel].Place.Room : wiring.Boxes[run.From].Place.Room;

    private int RoomOf(string panel) => layout.Panels.First(p => p.Source.Id == panel).Place.Room;

    private static Finding Assumed(Building building) => new()
    {
        Code = "trench-assumed",
        Severity = Severity.Advice,
        Where = [building.Id],
        Text = $"{building.Called()} has no place on the plan, so the length of its trench is not known. State the trench, or draw the building where it stands.",
    };

    private static Finding DigSafely() => new()
    {
        Code = "dig-safely",
        Severity = Severity.Advice,
        Text = "Before anybody digs, have gas, water, electric and other buried lines marked; in the United States a call to 811 some days ahead is free and required by law. The trench is inspected before it is filled.",
    };
}
