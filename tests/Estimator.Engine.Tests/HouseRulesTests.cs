using System.Reflection;
using System.Text.RegularExpressions;
using Estimator.TestKit;

namespace Estimator.Engine.Tests;

/// <summary>How the house of the code is kept: read from its own source and types.</summary>
public sealed partial class HouseRulesTests
{
    private static string Source { get; } = Path.Combine(TestData.Repository, "src", "Estimator.Engine");

    [Fact]
    public void Engine_References_OnlyTheBaseClassLibrary() => Assert.All(
        typeof(JobEstimate).Assembly.GetReferencedAssemblies(), a => Assert.StartsWith("System", a.Name, StringComparison.Ordinal));

    [Fact]
    public void Types_OfTheEngine_AreSealedStaticOrAbstract() => Assert.All(
        typeof(JobEstimate).Assembly.GetExportedTypes(), t => Assert.True(t.IsSealed || t.IsAbstract || t.IsValueType, t.FullName));

    [Fact]
    public void Files_OfTheEngine_AreSmallAndHoldTheTypeTheyAreNamedFor() => Assert.All(Files(), f =>
    {
        var text = File.ReadAllText(f);
        Assert.True(text.Count(c => c == '\n') <= 400, f);
        Assert.Single(PublicType().Matches(text).Select(m => m.Groups["name"].Value).DefaultIfEmpty("internal").Distinct());
    });

    [Fact]
    public void Folders_OfTheEngine_DependOneWay()
    {
        var uses = Files().Select(f => (Folder: Folder(f), Text: File.ReadAllText(f))).Where(f => f.Folder.Length > 0).GroupBy(f => f.Folder)
            .ToDictionary(g => g.Key, g => g.SelectMany(f => Using().Matches(f.Text).Select(m => m.Groups["name"].Value)).Where(u => u != g.Key).ToHashSet());
        while (uses.Count > 0)
        {
            var free = uses.Where(u => !u.Value.Any(uses.ContainsKey)).Select(u => u.Key).ToList();
            Assert.True(free.Count > 0, $"a cycle among {string.Join(", ", uses.Select(u => $"{u.Key} -> {string.Join(' ', u.Value.Where(uses.ContainsKey))}"))}");
            free.ForEach(f => uses.Remove(f));
        }
    }

    // A time limit would let the machine's load decide what is a length.
    [Fact]
    public void Patterns_OfTheEngine_HaveNoTimeLimit()
    {
        var patterns = typeof(JobEstimate).Assembly.GetTypes().SelectMany(t => t.GetMethods(BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.Public))
            .Where(m => m.ReturnType == typeof(Regex) && m.GetParameters().Length == 0 && m.GetCustomAttribute<GeneratedRegexAttribute>() is not null).ToList();
        Assert.NotEmpty(patterns);
        Assert.All(patterns, m => Assert.Equal(Regex.InfiniteMatchTimeout, ((Regex)m.Invoke(null, null)!).MatchTimeout));
    }

    private static IEnumerable<string> Files() => Directory.GetFiles(Source, "*.cs", SearchOption.AllDirectories).Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal));

    private static string Folder(string file) => Path.GetRelativePath(Source, file).Split(Path.DirectorySeparatorChar) is [var folder, _, ..] ? folder : "";

    [GeneratedRegex(@"^using Estimator\.Engine\.(?<name>\w+)", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex Using();

    [GeneratedRegex(@"^public (?:sealed |static |abstract |readonly |partial )*(?:record struct|record|class|struct|enum|interface) (?<name>\w+)", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex PublicType();
}
