using Estimator.Cli.Import;
using Estimator.Engine.Catalogue;
using Estimator.Engine.House;
using Estimator.TestKit;

namespace Estimator.RealPlans.Tests;

/// <summary>The plans that may not be part of the repository, in the folder that ESTIMATOR_DATA names.</summary>
internal static class PlanFolder
{
    private static readonly string[] NotPlans = ["duplex-devices.json", "neutral-floor-plan.schema.json"];

    internal static TheoryData<string> Names() => [.. Directory.GetFiles(Folder, "*.json").Select(p => Path.GetFileName(p)).Where(n => !NotPlans.Contains(n)).Order(StringComparer.Ordinal)];

    internal static Job Job(string name, CodeEdition edition = CodeEdition.Nec2023) => PlanImport.ToJob(Plan(name), edition, null);

    internal static NeutralPlan Plan(string name) => NeutralPlan.Read(File.ReadAllText(Path.Combine(Folder, name)), name);

    internal static PartsCatalogue Catalogue { get; } = PartsCatalogue.Read(PartsCatalogue.FileNames.ToDictionary(
        n => n, n => File.ReadAllText(Path.Combine(TestData.Repository, "db", "catalog", n)), StringComparer.Ordinal)).Value;

    private static string Folder => Environment.GetEnvironmentVariable("ESTIMATOR_DATA") is { Length: > 0 } data && Directory.Exists(Path.Combine(data, "floorplans"))
        ? Path.Combine(data, "floorplans")
        : throw new InvalidOperationException("ESTIMATOR_DATA does not name a folder with floorplans; these tests need it.");
}
