using System.Collections.Immutable;
using Estimator.Engine.Catalogue;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Catalogue;

/// <summary>A job can carry the catalogue that it was priced with.</summary>
public sealed class KeptCatalogueTests
{
    [Fact]
    public void ShippedCatalogue_KeptInAJob_IsReadBack()
    {
        var files = PartsCatalogue.FileNames.ToImmutableSortedDictionary(n => n, n => new CsvText(File.ReadAllText(Path.Combine(TestData.Repository, "db", "catalog", n))));
        var job = SmallJobs.OneRoom(RoomKind.Bedroom) with { CatalogueSnapshot = files };
        Assert.Equal(files, JobFile.Read(JobFile.Write(job), "kept.json").Job.CatalogueSnapshot);
    }
}
