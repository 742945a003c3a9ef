using Estimator.Cli.Import;
using Estimator.Engine;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Wiring;
using Estimator.TestKit;
using Estimator.Web.Catalogues;
using Estimator.Web.Jobs;
using Estimator.Web.Plans;

namespace Estimator.Web.Tests.Plans;

/// <summary>The houses that the plan is proved on, each estimated once.</summary>
internal static class PlanHouses
{
    /// <summary>Both samples, both units of the published duplex (CREDIT.md beside its files), and a house of sizes without places.</summary>
    internal static TheoryData<string> Names => ["basement-finish", "two-storey-house", "us-duplex-unit-a", "us-duplex-unit-b", "sizes-only"];

    private static readonly Dictionary<string, Lazy<JobEstimate>> Estimates = Names.ToDictionary(n => n.Data, n => new Lazy<JobEstimate>(() => JobEstimate.Compute(Job(n.Data), CatalogueShelf.BuiltIn().Parts, SearchDepth.Quick)));

    internal static JobEstimate Estimate(string name) => Estimates[name].Value;

    internal static IEnumerable<PlanSheet> Sheets(string name) => Estimate(name).House.Levels.Select(l => PlanDrawing.Of(Estimate(name), l.Index));

    internal static Job Job(string name) => name switch
    {
        "sizes-only" => SizesOnly(),
        _ when name.StartsWith("us-", StringComparison.Ordinal) => PlanImport.ToJob(NeutralPlan.Read(File.ReadAllText(TestData.FloorPlan($"{name}.json")), name), CodeEdition.Nec2023, null),
        _ => JobStarts.Sample(name),
    };

    private static Job SizesOnly()
    {
        var job = JobStarts.Blank("Sizes only");
        var bedroom = new Room { Id = "R2", Name = "Bedroom", Kind = RoomKind.Bedroom, Size = new RectangleSize(Length.FromFeet(12), Length.FromFeet(10)), Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 5 }] };
        return job with { Levels = [job.Levels[0] with { Rooms = job.Levels[0].Rooms.Add(bedroom) }] };
    }
}
