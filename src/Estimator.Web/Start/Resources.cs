namespace Estimator.Web.Start;

/// <summary>Files that the program carries with it.</summary>
internal static class Resources
{
    internal static string Read(string name)
    {
        using var stream = typeof(Resources).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"The program lacks its file {name}.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
