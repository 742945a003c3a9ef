using Estimator.Engine.Rules;

namespace Estimator.Documents.Crew;

/// <summary>The tables of what a crew brings and tests: data in the assembly, each row with its basis.</summary>
internal static class CrewTable
{
    private static readonly Lazy<RuleTable> LazyKit = new(() => Load("crew_kit"));
    private static readonly Lazy<RuleTable> LazyTests = new(() => Load("circuit_tests"));

    /// <summary>Tools and consumables.</summary>
    internal static RuleTable Kit => LazyKit.Value;

    /// <summary>Tests of circuits and panels.</summary>
    internal static RuleTable Tests => LazyTests.Value;

    /// <summary>On what a row rests, in words.</summary>
    internal static string Basis(RuleRow row) =>
        row.Basis == "common practice, no source" ? row.Basis : string.Join(", ", new[] { row.Source.Title, row.Source.Edition, row.Source.Section }.Where(t => t.Length > 0));

    private static RuleTable Load(string id)
    {
        using var stream = typeof(CrewTable).Assembly.GetManifestResourceStream($"crew/{id}.json") ?? throw new InvalidDataException($"The assembly has no table {id}.");
        using var reader = new StreamReader(stream);
        return RuleTable.Read(id, reader.ReadToEnd());
    }
}
