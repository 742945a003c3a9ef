using Estimator.TestKit;

namespace Estimator.Cli.Tests;

/// <summary>The examples of the README run.</summary>
public sealed class ReadmeTests : IDisposable
{
    private const string Prefix = "    dotnet run -c Release --project src/Estimator.Cli -- ";

    private readonly string _folder = Directory.CreateTempSubdirectory("readme").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Examples_OfReadme_RunInOrder()
    {
        var examples = File.ReadAllLines(Path.Combine(TestData.Repository, "README.md")).Where(l => l.StartsWith(Prefix, StringComparison.Ordinal)).ToList();
        Assert.True(examples.Count >= 8);
        foreach (var example in examples)
        {
            var words = example[Prefix.Length..].Split(' ');
            var to = Array.IndexOf(words, ">");
            using var output = new StringWriter();
            using var error = new StringWriter();
            var code = Verbs.Run([.. (to < 0 ? words : words[..to]).Select(Placed)], TextReader.Null, output, error);
            Assert.True(code is 0 or 1, $"{example}: {error}");
            if (to >= 0)
            {
                File.WriteAllText(Placed(words[to + 1]), output.ToString());
            }
        }
    }

    // Files that the examples make go to a folder of the test's own; files of the repository are read where they are.
    private string Placed(string word) => !word.Contains('.', StringComparison.Ordinal) || word.StartsWith("sample:", StringComparison.Ordinal) ? word
        : word.StartsWith("tests/", StringComparison.Ordinal) ? Path.Combine(TestData.Repository, word) : Path.Combine(_folder, word);
}
