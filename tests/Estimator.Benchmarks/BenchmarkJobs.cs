using Estimator.Cli;
using Estimator.Cli.Import;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;

namespace Estimator.Benchmarks;

/// <summary>The jobs that are timed: both samples, rows of equal rooms, and the largest real plan where ESTIMATOR_DATA names its folder.</summary>
internal static class BenchmarkJobs
{
    private const string Rooms = "rooms-";
    private const int RoomsInARow = 10;

    internal static IEnumerable<string> Names =>
    [
        .. Samples.Names, $"{Rooms}10", $"{Rooms}100", $"{Rooms}{JobLimits.Rooms}", .. Largest is { } path ? new[] { Path.GetFileNameWithoutExtension(path) } : [],
    ];

    internal static string Text(string name) => name.StartsWith(Rooms, StringComparison.Ordinal) ? JobFile.Write(RowsOf(int.Parse(name[Rooms.Length..])))
        : Samples.Names.Contains(name) ? Samples.Read(name)
        : JobFile.Write(PlanImport.ToJob(NeutralPlan.Read(File.ReadAllText(Largest!), name), CodeEdition.Nec2023, null));

    // The plan with the longest file is the one with the most rooms and openings.
    private static string? Largest => Environment.GetEnvironmentVariable("ESTIMATOR_DATA") is { Length: > 0 } data && Directory.Exists(Path.Combine(data, "floorplans"))
        ? Directory.GetFiles(Path.Combine(data, "floorplans"), "*-*.json").Where(p => !p.EndsWith("schema.json", StringComparison.Ordinal)).MaxBy(p => new FileInfo(p).Length)
        : null;

    // Bedrooms of 12 by 12 ft, ten in a row, each with a door, a light, a switch and six receptacles; the panel in the first.
    private static Job RowsOf(int rooms) => new()
    {
        Id = $"{Rooms}{rooms}",
        Name = $"{rooms} rooms",
        Levels =
        [
            new Level
            {
                Id = "L1",
                Rooms = [.. Enumerable.Range(0, rooms).Select(Bedroom)],
                Openings =
                [
                    .. Enumerable.Range(0, rooms).Select(n => new Opening
                    {
                        Id = $"D{n}", Kind = OpeningKind.Door, Room = $"R{n}", Wall = new WallSpot(1, Length.FromFeet(6)), Width = Length.FromInches(32),
                    }),
                ],
            },
        ],
        Panels = [new Panel { Id = "P1", Room = "R0", Wall = new WallSpot(4, Length.FromFeet(6)), RatingA = Current.FromAmperes(200), Spaces = 84 }],
    };

    private static Room Bedroom(int n) => new()
    {
        Id = $"R{n}",
        Name = $"Bedroom {n + 1}",
        Kind = RoomKind.Bedroom,
        Size = new RectangleSize(Length.FromFeet(12), Length.FromFeet(12)),
        At = new GridPoint(Length.FromFeet(12.5m) * (n % RoomsInARow), Length.FromFeet(12.5m) * (n / RoomsInARow)),
        Counts =
        [
            new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 6 },
            new DeviceCount { Kind = DeviceKind.SinglePoleSwitch, Count = 1 },
            new DeviceCount { Kind = DeviceKind.CeilingLight, Count = 1 },
        ],
    };
}
