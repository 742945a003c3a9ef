namespace Estimator.Cli;

/// <summary>Files that the program carries with it.</summary>
internal static class Resources
{
    internal static string Read(string name)
    {
        using var stream = typeof(Resources).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"The program lacks its file {name}.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    internal static IEnumerable<string> Names(string folder) =>
        typeof(Resources).Assembly.GetManifestResourceNames().Where(n => n.StartsWith(folder, StringComparison.Ordinal)).Select(n => n[folder.Length..]).Order(StringComparer.Ordinal);
}
