using Estimator.Engine.Catalogue;

namespace Estimator.TestKit;

/// <summary>The catalogue that ships with the program.</summary>
public static class Catalogues
{
    public static PartsCatalogue Shipped { get; } = Read();

    /// <summary>Its files, name to CSV text.</summary>
    public static IReadOnlyDictionary<string, string> ShippedFiles =>
        PartsCatalogue.FileNames.ToDictionary(n => n, n => File.ReadAllText(Path.Combine(TestData.Repository, "db", "catalog", n)), StringComparer.Ordinal);

    private static PartsCatalogue Read() => PartsCatalogue.Read(ShippedFiles).Value;
}
