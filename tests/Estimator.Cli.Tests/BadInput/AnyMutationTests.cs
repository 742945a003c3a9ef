using CsCheck;
using Estimator.Cli.Calc;
using Estimator.Engine.Catalogue;
using Estimator.TestKit;

namespace Estimator.Cli.Tests.BadInput;

/// <summary>Whatever becomes of a file: done, done with findings, or refused with what was found and what is accepted. Never a fault, never half a result.</summary>
public sealed class AnyMutationTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("mutations").FullName;

    private string Output => Path.Combine(_folder, "output");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("basement-finish", 150)]
    [InlineData("two-storey-house", 300)]
    public void AnyVerb_OfAChangedJob_IsDoneOrRefused(string sample, int times)
    {
        var job = Path.Combine(_folder, "job.json");
        string[][] verbs = [["check", job], ["explain", job, "nm_b-12-2"], ["buy", job, "--csv", Output], ["takeoff", job, "--json", Output]];
        Gen.Select(JsonMutations.Of(Samples.Read(sample)), Gen.Int[0, verbs.Length - 1]).Sample(
            (text, verb) =>
            {
                Write("job.json", text);
                Holds(verbs[verb]);
            },
            iter: times, threads: 1);
    }

    [Fact]
    public void Import_OfAChangedPlan_IsDoneOrRefused() => JsonMutations.Of(File.ReadAllText(TestData.FloorPlan("us-duplex-unit-a.json"))).Sample(
        text =>
        {
            if (Holds(["import", Write("plan.json", text), "--out", Output]) == 0)
            {
                Assert.InRange(Verbs.Run(["check", Output], TextReader.Null, TextWriter.Null, TextWriter.Null), 0, 1);
            }
        },
        iter: 200, threads: 1);

    [Fact]
    public void Calc_OfAChangedExample_IsDoneOrRefused() =>
        Gen.OneOf([.. CalcTopics.All.Select(t => JsonMutations.Of(t.Example).Select(text => (t.Name, Text: text)))]).Sample(c => Holds(["calc", c.Name], c.Text), iter: 3000, threads: 1);

    [Fact]
    public void Takeoff_OnAChangedCatalogue_IsDoneOrRefused()
    {
        var files = PartsCatalogue.FileNames.ToDictionary(n => n, n => File.ReadAllText(Path.Combine(TestData.Repository, "db", "catalog", n)), StringComparer.Ordinal);
        string[] pieces = ["", "-1", "0", "1e30", "99999999999999999999999999999999", "\"", "\"\"\"", "=1", "x", "\n", ",", "\0"];
        Gen.Select(Gen.Int[0, files.Count - 1], Gen.Int[0, 100_000], Gen.Int[0, 9], Gen.Int[0, pieces.Length - 1]).Sample(
            (changed, at, cut, piece) =>
            {
                foreach (var (file, text) in files)
                {
                    var from = at % text.Length;
                    Write(file, file != PartsCatalogue.FileNames[changed] ? text : cut == 9 ? text[..from] : string.Concat(text.AsSpan(0, from), pieces[piece], text.AsSpan(Math.Min(text.Length, from + cut))));
                }

                Holds(["takeoff", "sample:basement-finish", "--catalog", _folder, "--json", Output]);
            },
            iter: 150, threads: 1);
    }

    private int Holds(string[] words, string input = "")
    {
        File.Delete(Output);
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = Verbs.Run(words, new StringReader(input), output, error);
        Assert.True(code is 0 or 1 or 2, error.ToString());
        if (code == 2)
        {
            Assert.False(File.Exists(Output));
            Assert.Empty(output.ToString());
            Assert.Contains("found", error.ToString(), StringComparison.Ordinal);
            Assert.Contains("accepted", error.ToString(), StringComparison.Ordinal);
        }

        return code;
    }

    private string Write(string name, string text)
    {
        var path = Path.Combine(_folder, name);
        File.WriteAllText(path, text);
        return path;
    }
}
