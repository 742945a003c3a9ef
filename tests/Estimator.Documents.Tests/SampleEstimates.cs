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

    public static JobEstimate Basement => LazyBasement.Value;

    public static JobEstimate House => LazyHouse.Value;

    public static Job Job(string sample)
    {
        var path = Path.Combine(TestData.Repository, "src", "Estimator.Cli", "Samples", $"{sample}.json");
        return JobFile.Read(File.ReadAllText(path), path).Job!;
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
