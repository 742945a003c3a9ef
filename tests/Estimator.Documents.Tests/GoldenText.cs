namespace Estimator.Documents.Tests;

/// <summary>Compares text with a file that stands beside the tests. <c>REWRITE_GOLDEN=1</c> writes the file anew; reviewers read the difference.</summary>
public static class GoldenText
{
    public static void AssertEqual(string file, string actual)
    {
        var path = Path.Combine(TestKit.TestData.Repository, "tests", "Estimator.Documents.Tests", "Golden", file);
        if (Environment.GetEnvironmentVariable("REWRITE_GOLDEN") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, actual);
        }

        var expected = File.ReadAllText(path).Split('\n');
        var found = actual.Split('\n');
        for (var i = 0; i < Math.Min(expected.Length, found.Length); i++)
        {
            Assert.True(expected[i] == found[i], $"{file}, line {i + 1}: the file says '{expected[i]}', the workbook '{found[i]}'. REWRITE_GOLDEN=1 writes the file anew.");
        }

        Assert.Equal(expected.Length, found.Length);
    }
}
