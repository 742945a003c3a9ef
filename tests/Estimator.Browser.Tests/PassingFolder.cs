namespace Estimator.Browser.Tests;

/// <summary>A folder of its own for one test, gone with it.</summary>
internal sealed class PassingFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("estimator");

    internal string Path => _folder.FullName;

    public void Dispose() => _folder.Delete(recursive: true);
}
