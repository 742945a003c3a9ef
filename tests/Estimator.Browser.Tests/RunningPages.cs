using System.Diagnostics;
using Estimator.Browser.Tests;
using Estimator.TestKit;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(RunningPages))]

namespace Estimator.Browser.Tests;

/// <summary>The program as a user starts it, on a database of this run's own, and one Chromium to look at it with.</summary>
public sealed class RunningPages : IAsyncLifetime
{
    private const string Chromium = "/usr/bin/chromium";

    private static readonly string[] Flags =
        ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

    private readonly string _folder = Directory.CreateTempSubdirectory("pages").FullName;
    private Process? _server;
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    /// <summary>Address of the first page, without a slash at its end.</summary>
    public string Address { get; private set; } = "";

    public async ValueTask InitializeAsync()
    {
        if (!File.Exists(Chromium))
        {
            throw new InvalidOperationException($"{Chromium} is missing, so no page can be looked at: install the Debian package chromium.");
        }

        Address = await StartAsync();
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = Chromium, Args = Flags });
    }

    /// <summary>A browser window of its own, watched for faults.</summary>
    public async Task<Visit> OpenAsync(Screen screen, bool night = false)
    {
        var context = await _browser!.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = screen is Screen.Desk ? new ViewportSize { Width = 1440, Height = 900 } : new ViewportSize { Width = 390, Height = 844 },
            ColorScheme = night ? ColorScheme.Dark : ColorScheme.Light,
            ReducedMotion = ReducedMotion.Reduce,
            AcceptDownloads = true,
        });
        return new Visit(await context.NewPageAsync(), Address);
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.CloseAsync();
        }

        _playwright?.Dispose();
        if (_server is { HasExited: false })
        {
            _server.Kill(entireProcessTree: true);
            await _server.WaitForExitAsync();
        }

        _server?.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private async Task<string> StartAsync()
    {
        const string Words = "The estimator is at ";
        var program = Path.Combine(TestData.Repository, "src", "Estimator.Web", "bin", "Release", "net10.0", "Estimator.Web.dll");
        _server = Process.Start(new ProcessStartInfo("dotnet", [program, "--urls", "http://127.0.0.1:0", "--data-folder", _folder])
        {
            RedirectStandardOutput = true,
            UseShellExecute = false,
        })!;
        while (await _server.StandardOutput.ReadLineAsync() is { } line)
        {
            if (line.StartsWith(Words, StringComparison.Ordinal))
            {
                // What it says later is read on, or a full pipe would stop it.
                _ = _server.StandardOutput.ReadToEndAsync();
                return line[Words.Length..].Trim().TrimEnd('/');
            }
        }

        throw new InvalidOperationException($"{program} ended before it said where it is; build it in Release first.");
    }
}
