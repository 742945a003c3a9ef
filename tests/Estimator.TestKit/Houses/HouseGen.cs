using System.Collections.Immutable;
using CsCheck;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.TestKit.Houses;

/// <summary>Makes small random jobs: one to three levels, rooms of several shapes, openings, devices, equipment and panels, all in whole inches.</summary>
public sealed class HouseGen : Gen<Job>
{
    private const ulong Sweep = 20_251;

    /// <summary>The generator.</summary>
    public static HouseGen Jobs { get; } = new();

    /// <summary>House of a number: the same number, the same house.</summary>
    public static Job Number(int number) => Jobs.Generate(new PCG((uint)number, Sweep), null, out _);

    public override Job Generate(PCG pcg, Size? min, out Size size)
    {
        var job = Make(new Draw(pcg));
        size = new Size((ulong)job.Levels.SelectMany(l => l.Rooms).Sum(r => 1 + r.Placed.Length + r.Counts.Sum(c => c.Count)));
        return job;
    }

    private static readonly ImmutableSortedDictionary<string, Percent> Spares =
        new[] { ("box", 4m), ("device", 7.5m), ("plate", 10m), ("breaker", 3m), ("wire", 2m), ("conduit", 5m) }.ToImmutableSortedDictionary(s => s.Item1, s => Percent.FromHundredths(s.Item2), StringComparer.Ordinal);

    private static Job Make(Draw draw)
    {
        var levels = draw.Pick(1, 1, 1, 1, 2, 2, 3);
        var (width, depth) = (draw.Int(200, 420), draw.Int(170, 320));
        var finished = draw.Chance(25);
        var ceiling = draw.Int(90, 108);
        var built = Enumerable.Range(0, levels).Select(l => LevelGen.Make(
            new Rect(draw.Int(-40, 0) * 0, 0, width - l * draw.Pick(0, 0, 24), depth), l, levels, ceiling, finished, draw)).ToImmutableArray();
        var rooms = built.SelectMany(l => l.Rooms).Where(r => r.Kind is not (RoomKind.Void or RoomKind.Outdoors)).ToImmutableArray();
        var job = new Job
        {
            Id = "random",
            Name = "Random house",
            Code = new CodeBasis { Edition = draw.Pick(CodeEdition.Nec2017, CodeEdition.Nec2020, CodeEdition.Nec2023, CodeEdition.Nec2026) },
            Levels = built,
            Panels = [.. PanelGen.Panels(rooms, draw)],
            Equipment = [.. PanelGen.Equipment(rooms, draw)],
            Service = PanelGen.Service(draw),
            Practice = new Practice
            {
                MixLightsAndReceptacles = draw.Chance(25) ? true : null,
                GroundFaultBy = draw.Pick<GroundFaultBy?>(null, null, GroundFaultBy.Breaker, GroundFaultBy.FirstReceptacle),
                Occupied = draw.Chance(10),
                BoxTail = draw.Chance(10) ? Draw.Inches(8) : null,

                // By the width of the house, so that what is drawn for the others stays as it was.
                SparePercents = width % 9 == 0 ? Spares : ImmutableSortedDictionary<string, Percent>.Empty,
            },
        };
        job = draw.Chance(18) ? RoomFilling.AcrossRooms(job, rooms, draw) : job;
        job = draw.Chance(12) ? Otherwise(job, draw) : job;
        return draw.Chance(8) ? BuildingGen.Beside(job, draw) : job;
    }

    // Armored cable or conduit in the whole house or in one of its rooms.
    private static Job Otherwise(Job job, Draw draw)
    {
        var method = draw.Pick(WiringMethod.Mc, WiringMethod.Emt);
        if (draw.Chance(50))
        {
            return job with { Practice = job.Practice with { WiringMethod = method } };
        }

        var level = job.Levels[0];
        var room = draw.Int(0, level.Rooms.Length - 1);
        return job with { Levels = job.Levels.SetItem(0, level with { Rooms = level.Rooms.SetItem(room, level.Rooms[room] with { WiringMethod = method }) }) };
    }
}
