using Estimator.Engine.Catalogue;

namespace Estimator.TestKit;

/// <summary>The catalogue that ships with the program.</summary>
public static class Catalogues
{
    public static PartsCatalogue Shipped { get; } = Read();

    private static PartsCatalogue Read()
    {
        var folder = Path.Combine(TestData.Repository, "db", "catalog");
        return PartsCatalogue.Read(PartsCatalogue.FileNames.ToDictionary(n => n, n => File.ReadAllText(Path.Combine(folder, n)), StringComparer.Ordinal)).Value;
    }
}
