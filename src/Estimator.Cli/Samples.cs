namespace Estimator.Cli;

/// <summary>The sample jobs.</summary>
internal static class Samples
{
    internal static IEnumerable<string> Names => Resources.Names("samples/").Select(n => n[..^".json".Length]);

    internal static string Read(string name) => Names.Contains(name, StringComparer.Ordinal)
        ? Resources.Read($"samples/{name}.json")
        : throw new WrongInputException($"sample: found '{name}'; one of {string.Join(", ", Names)} is accepted.");
}
