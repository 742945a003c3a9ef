namespace Estimator.Cli.Tests;

/// <summary>A job that was kept with its catalogue is priced alike where the catalogue has changed.</summary>
public sealed class KeptCatalogueTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("kept").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Takeoff_OfAKeptJob_TakesTheCatalogueItWasPricedWith()
    {
        var (dear, kept) = (Path.Combine(_folder, "dear"), Path.Combine(_folder, "kept.json"));
        Directory.CreateDirectory(dear);
        foreach (var file in Directory.GetFiles(Path.Combine(TestKit.TestData.Repository, "db", "catalog"), "*.csv"))
        {
            File.WriteAllText(Path.Combine(dear, Path.GetFileName(file)), File.ReadAllText(file).Replace("nm_b-12-2,sample-a,250,", "nm_b-12-2,sample-a,250,9", StringComparison.Ordinal)
                .Replace("nm_b-12-2,sample-b,", "nm_b-12-2,sample-b,9", StringComparison.Ordinal));
        }

        var usual = Run("takeoff", "sample:basement-finish");
        var priced = Run("takeoff", "sample:basement-finish", "--catalog", dear, "--keep", kept);
        Assert.NotEqual(usual, priced);
        Assert.Equal(priced, Run("takeoff", kept));
    }

    private static string Run(params string[] words)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        Assert.True(Verbs.Run(words, TextReader.Null, output, error) is 0 or 1, error.ToString());
        return output.ToString();
    }
}
