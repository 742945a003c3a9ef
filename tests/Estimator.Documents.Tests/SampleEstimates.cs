using Estimator.Engine;
using Estimator.Engine.Catalogue;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.TestKit;

namespace Estimator.Documents.Tests;

/// <summary>The sample jobs, estimated with the catalogue that ships or with a changed price.</summary>
public static class SampleEstimates
{
    private static readonly Lazy<JobEstimate> LazyBasement = new(() => JobEstimate.Compute(Job("basement-finish"), Catalogues.Shipped));
    private static readonly Lazy<JobEstimate> LazyHouse = new(() => JobEstimate.Compute(Job("two-storey-house"), Catalogues.Shipped));

    private static readonly Lazy<JobEstimate> LazyService = new(() => JobEstimate.Compute(ServiceJob(), Catalogues.Shipped));

    /// <summary>A kitchen with a subpanel, two circuits moved to it, two on a new tandem, and a new service.</summary>
    public static JobEstimate Service => LazyService.Value;

    public static JobEstimate Basement => LazyBasement.Value;

    public static JobEstimate House => LazyHouse.Value;

    public static Job Job(string sample)
    {
        var path = Path.Combine(TestData.Repository, "src", "Estimator.Cli", "Samples", $"{sample}.json");
        return JobFile.Read(File.ReadAllText(path), path).Job!;
    }

    private static Job ServiceJob()
    {
        var path = Path.Combine(TestData.Root, "jobs", "kitchen-gut.json");
        var job = JobFile.Read(File.ReadAllText(path), path).Job!;
        ExistingCircuit Changed(ExistingCircuit c) => c.Id is "c1" or "c2" ? c with { MovedTo = "P2" } : c.Id is "c3" or "c4" ? c with { NewTandem = true } : c;
        return job with
        {
            Panels = [job.Panels[0] with { TandemSpaces = 4, Circuits = [.. job.Panels[0].Circuits.Select(Changed)] }, job.Panels[1]],
            Service = new ServiceWork { WaterPipe = true, Replaces = true, TemporaryPower = true, UtilityWaitDays = 12 },
        };
    }

    /// <summary>The shipped catalogue with files changed.</summary>
    public static PartsCatalogue Catalogue(Func<string, string, string> change)
    {
        var folder = Path.Combine(TestData.Repository, "db", "catalog");
        var files = PartsCatalogue.FileNames.ToDictionary(n => n, n => change(n, File.ReadAllText(Path.Combine(folder, n))), StringComparer.Ordinal);
        var catalogue = PartsCatalogue.Read(files);
        Assert.True(catalogue.Ok, catalogue.Ok ? "" : catalogue.Problem);
        return catalogue.Value;
    }

    /// <summary>The shipped catalogue with one price changed.</summary>
    public static PartsCatalogue CatalogueWithPrice(string item, string supplier, int pack, decimal price) => Catalogue((name, text) =>
        name != "offers.csv" ? text : string.Join('\n', text.Split('\n').Select(line =>
            line.StartsWith($"{item},{supplier},{pack},", StringComparison.Ordinal) ? FormattableString.Invariant($"{item},{supplier},{pack},{price},changed") : line)));
}
