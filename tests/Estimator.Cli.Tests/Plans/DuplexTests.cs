using System.Text.Json.Nodes;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.TestKit;

namespace Estimator.Cli.Tests.Plans;

/// <summary>
/// The published device counts of a real duplex survive import, takeoff and export. Source: BSI (2020) "Duplex Apartment Test Files", buildingSMART
/// International, CC BY 4.0.
/// </summary>
public sealed class DuplexTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("duplex").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("us-duplex-unit-a", "A")]
    [InlineData("us-duplex-unit-b", "B")]
    public void Counts_OfPublishedDuplex_SurviveImportTakeoffAndExport(string plan, string unit)
    {
        var (job, export) = (Path.Combine(_folder, "job.json"), Path.Combine(_folder, "takeoff.json"));
        Assert.Equal(0, Run("import", TestData.FloorPlan($"{plan}.json"), "--devices", TestData.FloorPlan("duplex-devices.json"), "--out", job));
        Assert.Equal(0, Run("takeoff", job, "--json", export));
        var published = Published(unit);
        var imported = JobFile.Read(File.ReadAllText(job), job).Job.Levels.SelectMany(l => l.Rooms).SelectMany(r => r.Counts).ToLookup(c => c.Kind, c => c.Count);
        var exported = JsonNode.Parse(File.ReadAllText(export))!["devices"]!.AsArray().GroupBy(d => d!["kind"]!.GetValue<string>()).ToDictionary(g => g.Key, g => g.Count());
        foreach (var (kind, count) in published)
        {
            Assert.Equal(count, imported[kind].Sum());
            Assert.Equal(count, exported[kind.ToString()]);
        }
    }

    // The units mirror each other but for hundredths of a foot in the published outlines.
    [Fact]
    public void Mirror_OfTheOtherUnit_NeedsTheSameCable()
    {
        var (a, b) = (Cable("us-duplex-unit-a"), Cable("us-duplex-unit-b"));
        Assert.Equal(a.Count, b.Count);
        Assert.All(a.Zip(b), pair => Assert.Equal((double)pair.First, (double)pair.Second, (double)pair.First / 100));
    }

    private static List<decimal> Cable(string plan)
    {
        var job = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.json");
        try
        {
            Assert.Equal(0, Run("import", TestData.FloorPlan($"{plan}.json"), "--out", job));
            using var output = new StringWriter();
            Verbs.Run(["takeoff", job], TextReader.Null, output, TextWriter.Null);
            return [.. output.ToString().Split('\n').Where(l => l.Contains("NM-B cable", StringComparison.Ordinal))
                .Select(l => decimal.Parse(l.Trim().Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture))];
        }
        finally
        {
            File.Delete(job);
        }
    }

    private static int Run(params string[] args)
    {
        using var error = new StringWriter();
        var code = Verbs.Run(args, TextReader.Null, TextWriter.Null, error);
        Assert.True(code == 0, error.ToString());
        return code;
    }

    private static Dictionary<DeviceKind, int> Published(string unit)
    {
        var kinds = new Dictionary<string, DeviceKind>
        {
            ["duplex_receptacle"] = DeviceKind.DuplexReceptacle,
            ["single_pole_switch"] = DeviceKind.SinglePoleSwitch,
            ["smoke_detector"] = DeviceKind.SmokeAlarm,
            ["wall_light_100W"] = DeviceKind.WallLight,
            ["pendant_light_150W"] = DeviceKind.CeilingLight,
        };
        return JsonNode.Parse(File.ReadAllText(TestData.FloorPlan("duplex-devices.json")))!["rooms"]!.AsArray()
            .Where(r => r!["space"]!.GetValue<string>().StartsWith(unit, StringComparison.Ordinal))
            .SelectMany(r => r!["devices"]!.AsObject()).Where(d => kinds.ContainsKey(d.Key))
            .GroupBy(d => kinds[d.Key]).ToDictionary(g => g.Key, g => g.Sum(d => d.Value!.GetValue<int>()));
    }
}
