using System.Diagnostics;

namespace Estimator.Cli.Tests;

/// <summary>A process elsewhere in the world writes the same bytes.</summary>
public sealed class SameBytesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("bytes").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Takeoff_InAnotherTimeZoneAndLanguage_WritesTheSameBytes()
    {
        var here = await Takeoff("UTC", "C");
        Assert.NotEmpty(here);
        Assert.Equal(here, await Takeoff("Pacific/Kiritimati", "de_DE.UTF-8"));
        Assert.Equal(here, await Takeoff("America/St_Johns", "tr_TR.UTF-8"));
    }

    private async Task<byte[]> Takeoff(string zone, string language)
    {
        var file = Path.Combine(_folder, $"{Path.GetFileName(zone)}.json");
        var start = new ProcessStartInfo("dotnet", [typeof(Verbs).Assembly.Location, "takeoff", "sample:two-storey-house", "--json", file]) { RedirectStandardOutput = true, UseShellExecute = false };
        (start.Environment["TZ"], start.Environment["LANG"], start.Environment["LC_ALL"]) = (zone, language, language);
        using var process = Process.Start(start)!;
        await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken);
    }
}
