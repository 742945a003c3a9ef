using Estimator.Browser.Tests;
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
    private RunningServer? _server;
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public async ValueTask InitializeAsync()
    {
        if (!File.Exists(Chromium))
        {
            throw new InvalidOperationException($"{Chromium} is missing, so no page can be looked at: install the Debian package chromium.");
        }

        _server = await RunningServer.StartAsync(_folder);
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = Chromium, Args = Flags });
    }

    /// <summary>A browser window of its own, watched for faults.</summary>
    public Task<Visit> OpenAsync(Screen screen, bool night = false) => OpenAsync(_server!, screen, night);

    /// <summary>A window on another server.</summary>
    internal async Task<Visit> OpenAsync(RunningServer server, Screen screen, bool night = false)
    {
        var context = await _browser!.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = screen is Screen.Desk ? new ViewportSize { Width = 1440, Height = 900 } : new ViewportSize { Width = 390, Height = 844 },
            ColorScheme = night ? ColorScheme.Dark : ColorScheme.Light,
            ReducedMotion = ReducedMotion.Reduce,
            AcceptDownloads = true,
        });
        return new Visit(await context.NewPageAsync(), server);
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.CloseAsync();
        }

        _playwright?.Dispose();
        if (_server is not null)
        {
            await _server.DisposeAsync();
        }

        Directory.Delete(_folder, recursive: true);
    }
}
