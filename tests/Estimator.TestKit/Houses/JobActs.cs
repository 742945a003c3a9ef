using System.Collections.Immutable;
using CsCheck;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.TestKit.Houses;

/// <summary>Small acts of a user on a job: random, each leaving a job that is in order, with ids that no other editor makes.</summary>
public static class JobActs
{
    private const ulong Stream = 71_003;

    /// <summary>Text that must pass through everything as it is.</summary>
    public static ImmutableArray<string> Texts { get; } =
        ["Attic 🏠👩‍🔧", "=1+1", "@SUM(A1)", "<b onclick=alert(1)>x</b>", "'; drop table jobs; --", "a/b~c\"\\\n\t", new string('x', 10_000), "Küche №5", ""];

    /// <summary>The job after so many acts; the same number, the same acts.</summary>
    public static Job After(Job job, int number, int acts, string editor)
    {
        var draw = new Draw(new PCG((uint)number, Stream));
        for (var i = 0; i < acts; i++)
        {
            job = Act(job, draw, $"{editor}{draw.Int(0, 999)}-{i}");
        }

        return job;
    }

    private static Job Act(Job job, Draw draw, string id) => draw.Int(1, 16) switch
    {
        1 => job with { Name = Text(draw) },
        2 => job with { Notes = draw.Chance(30) ? null : Text(draw) },
        3 => job with { Bid = job.Bid with { ProfitPercent = draw.Chance(30) ? null : Percent.FromHundredths(draw.Int(0, 40)), Permit = Money.FromDollars(draw.Int(0, 900) / 4m) } },
        4 => job with { Practice = job.Practice with { OutletsPer20A = draw.Int(6, 13), BoxTail = draw.Chance(40) ? null : Draw.Inches(draw.Int(6, 12)), SparePercents = Spares(job, id) } },
        5 => job with { Code = job.Code with { Amendments = Put(job.Code.Amendments, new Amendment { Id = id, Kind = AmendmentKind.Add, Rule = "local", Text = Text(draw) }, draw) } },
        6 => job with { Unknowns = Cut(job.Unknowns, draw) },
        7 => job with { Unknowns = Put(job.Unknowns, new Unknown { Id = id, Topic = UnknownTopic.Other, Text = Text(draw) }, draw) },
        8 => job with { Equipment = Put(job.Equipment, new Equipment { Id = id, Kind = EquipmentKind.Other, Room = job.Panels[0].Room, Name = Text(draw) }, draw) },
        9 => job with { CatalogueSnapshot = draw.Chance(30) ? job.CatalogueSnapshot.Remove("offers.csv") : job.CatalogueSnapshot.SetItem(draw.Pick("offers.csv", "my items.csv"), new CsvText(Text(draw))) },
        10 => job with { Panels = [.. job.Panels.Select(p => p with { Make = Text(draw), Circuits = Put(p.Circuits, new ExistingCircuit { Id = id, BreakerA = Current.FromAmperes(20) }, draw) })] },
        11 => job with { Levels = [.. job.Levels.Select(l => l with { Rooms = Turned(l.Rooms, draw), Name = Text(draw) })] },
        12 => job with { Unknowns = Turned(job.Unknowns, draw), Equipment = Turned(job.Equipment, draw) },
        13 => OneRoom(job, draw, r => r with { Placed = Put(r.Placed, new PlacedDevice { Id = id, Kind = DeviceKind.DuplexReceptacle, Wall = new WallSpot(1, Draw.Inches(draw.Int(1, 12))) }, draw) }),
        14 => OneRoom(job, draw, r => r with { Counts = Counted(r.Counts, draw) }),
        15 => OneRoom(job, draw, r => r with { CeilingHeight = draw.Chance(30) ? null : Draw.Inches(draw.Int(90, 120)), Finished = draw.Chance(50) }),
        _ => OneRoom(job, draw, r => r with { Name = Text(draw), Fixtures = [.. r.Fixtures, new Fixture(FixtureKind.Sink)] }),
    };

    // Without a draw of its own: one category comes, changes or goes.
    private static ImmutableSortedDictionary<string, Percent> Spares(Job job, string id) => (id.Length + job.Unknowns.Length) % 3 is var at && at == 0
        ? job.Practice.SparePercents.Remove("box") : job.Practice.SparePercents.SetItem(at == 1 ? "box" : "device", Percent.FromHundredths(id.Length));

    private static string Text(Draw draw) => draw.Pick(Texts.AsSpan());

    private static ImmutableArray<T> Put<T>(ImmutableArray<T> items, T item, Draw draw) => items.Insert(draw.Chance(60) ? items.Length : draw.Int(0, items.Length), item);

    private static ImmutableArray<T> Cut<T>(ImmutableArray<T> items, Draw draw) => items.IsEmpty ? items : items.RemoveAt(draw.Int(0, items.Length - 1));

    private static ImmutableArray<T> Turned<T>(ImmutableArray<T> items, Draw draw)
    {
        var at = items.IsEmpty ? 0 : draw.Int(0, items.Length - 1);
        return [.. items[at..], .. items[..at]];
    }

    private static ImmutableArray<DeviceCount> Counted(ImmutableArray<DeviceCount> counts, Draw draw)
    {
        var kind = draw.Pick(DeviceKind.DuplexReceptacle, DeviceKind.RecessedLight, DeviceKind.SmokeAlarm);
        var at = counts.FirstOrDefault(c => c.Kind == kind && c.Serves is ServedPlace.Room);
        return at is null ? counts.Add(new DeviceCount { Kind = kind, Count = 1 }) : counts.Replace(at, at with { Count = at.Count + 1 });
    }

    private static Job OneRoom(Job job, Draw draw, Func<Room, Room> change)
    {
        var rooms = job.Levels.SelectMany(l => l.Rooms).Where(r => r.Kind is not RoomKind.Void).ToList();
        var id = rooms[draw.Int(0, rooms.Count - 1)].Id;
        return job.With(r => r.Id == id ? change(r) : r);
    }
}
