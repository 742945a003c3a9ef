using System.Collections.Immutable;
using System.Text.Json;
using Estimator.Engine.House;

namespace Estimator.Cli.Import;

/// <summary>Device counts by room that somebody published, published-device-counts/1.</summary>
public sealed record DeviceCounts(string Schema, IReadOnlyList<CountedRoom> Rooms)
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        MaxDepth = 32,
    };

    private static readonly Dictionary<string, DeviceKind> Kinds = new(StringComparer.Ordinal)
    {
        ["duplex_receptacle"] = DeviceKind.DuplexReceptacle,
        ["single_pole_switch"] = DeviceKind.SinglePoleSwitch,
        ["smoke_detector"] = DeviceKind.SmokeAlarm,
        ["wall_light_100W"] = DeviceKind.WallLight,
        ["pendant_light_150W"] = DeviceKind.CeilingLight,
    };

    private static readonly Dictionary<string, EquipmentKind> Equipment = new(StringComparer.Ordinal)
    {
        ["range"] = EquipmentKind.Range,
        ["refrigerator"] = EquipmentKind.Refrigerator,
        ["microwave"] = EquipmentKind.Microwave,
        ["boiler"] = EquipmentKind.Furnace,
    };

    /// <summary>Reads counts.</summary>
    /// <exception cref="WrongInputException">The text is not of this form.</exception>
    public static DeviceCounts Read(string json, string file)
    {
        try
        {
            var counts = JsonSerializer.Deserialize<DeviceCounts>(json, Options);
            return counts is { Schema: "published-device-counts/1" }
                ? counts
                : throw new WrongInputException($"{file}: $.schema: found '{counts?.Schema}'; accepted: published-device-counts/1.");
        }
        catch (JsonException e)
        {
            throw new WrongInputException($"{file}: {e.Path ?? "$"}: found {e.Message.Split(" Path:")[0].TrimEnd('.')}; accepted: the form of published-device-counts/1.");
        }
    }

    /// <summary>Puts the counts of a plan into its job; things that have no kind here become stated unknowns.</summary>
    /// <param name="job">The job.</param>
    /// <param name="plan">Id of the plan.</param>
    public Job Fill(Job job, string plan)
    {
        var unit = plan.Length > 0 ? Rooms.Where(r => r.Plan == plan).Select(r => r.Space[..1]).FirstOrDefault() ?? "" : "";
        var own = Rooms.Where(r => r.Space.StartsWith(unit, StringComparison.Ordinal)).ToList();
        var fallback = job.Levels[0].Rooms.FirstOrDefault(r => r.Kind is RoomKind.Hall) ?? job.Levels[0].Rooms[0];
        var byRoom = own.ToLookup(r => r.Plan == plan && r.Room is not null ? r.Room : fallback.Id, StringComparer.Ordinal);
        return job.WithRooms(r => r with { Counts = Counts(byRoom[r.Id]) }) with
        {
            Equipment = [.. own.SelectMany(r => r.Devices.Where(d => Equipment.ContainsKey(d.Key)).SelectMany(d => Enumerable.Range(1, d.Value)
                .Select(n => new Equipment { Id = $"{r.Space}-{d.Key}-{n}", Kind = Equipment[d.Key], Name = d.Key, Room = r.Room ?? fallback.Id })))],
            Unknowns = [.. own.SelectMany(r => r.Devices.Where(d => !Kinds.ContainsKey(d.Key) && !Equipment.ContainsKey(d.Key) && d.Key != "panelboard")
                .Select(d => new Unknown { Id = $"{r.Space}-{d.Key}", Topic = UnknownTopic.Other, Text = $"{r.Name}: {d.Value} {d.Key.Replace('_', ' ')}, not taken off here" }))],
            Proposals =
            [
                .. job.Proposals,
                "Devices are the published counts of the plan's author, not a code-compliant layout.",
                .. own.Where(r => r.Room is null).Select(r => $"{r.Name} has no outline in the plan; its devices were counted in {fallback.Name}."),
            ],
        };
    }

    private static ImmutableArray<DeviceCount> Counts(IEnumerable<CountedRoom> rooms) =>
        [.. rooms.SelectMany(r => r.Devices).Where(d => Kinds.ContainsKey(d.Key)).GroupBy(d => Kinds[d.Key]).OrderBy(g => g.Key).Select(g => new DeviceCount { Kind = g.Key, Count = g.Sum(d => d.Value) })];
}
