using System.Diagnostics;
using System.Globalization;
using Estimator.Browser.Tests;
using Microsoft.Playwright;

namespace Estimator.Benchmarks;

/// <summary>What a person waits for in the browser, and what a connected tab holds in memory beside the empty template of the framework, in one run.</summary>
internal static class PageMeasuring
{
    private const int Edits = 40;
    private const int Tabs = 20;
    private const string Chromium = "/usr/bin/chromium";

    /// <summary>Measures and prints.</summary>
    internal static async Task RunAsync()
    {
        var scratch = Directory.CreateTempSubdirectory("measured").FullName;
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = Chromium, Args = ["--no-sandbox", "--disable-gpu"] });
        try
        {
            var clock = Stopwatch.StartNew();
            await using (var server = await RunningServer.StartAsync(Path.Combine(scratch, "data")))
            {
                Console.WriteLine($"start to address        {clock.ElapsedMilliseconds} ms");
                Console.WriteLine($"first page, cold        {await FirstPageAsync(browser, server.Address)} ms");
                Console.WriteLine($"first page, warm        {await FirstPageAsync(browser, server.Address)} ms");
                await EditsAsync(browser, server.Address);
            }

            await using (var server = await RunningServer.StartAsync(Path.Combine(scratch, "tabs")))
            {
                var id = await SampleAsync(browser, server.Address);
                await TabsAsync("this program", browser, $"{server.Address}/jobs/{id}/overview", server.ProcessId);
            }

            using var template = await TemplateAsync(scratch);
            await TabsAsync("empty template", browser, "http://127.0.0.1:5387/", template.Id);
            template.Kill(entireProcessTree: true);
        }
        finally
        {
            Directory.Delete(scratch, recursive: true);
        }
    }

    private static async Task<long> FirstPageAsync(IBrowser browser, string address)
    {
        var page = await browser.NewPageAsync();
        var clock = Stopwatch.StartNew();
        await page.GotoAsync(address);
        await page.Locator("h1").First.WaitForAsync();
        var waited = clock.ElapsedMilliseconds;
        await page.CloseAsync();
        return waited;
    }

    private static async Task<string> SampleAsync(IBrowser browser, string address)
    {
        var page = await browser.NewPageAsync();
        await page.GotoAsync(address);
        await page.GetByRole(AriaRole.Button, new() { Name = "Two-storey house" }).ClickAsync();
        await page.WaitForURLAsync("**/jobs/*/overview");
        await page.Locator(".price .mid button[data-n]").WaitForAsync();
        await page.CloseAsync();
        return new Uri(page.Url).Segments[2].TrimEnd('/');
    }

    // From the change of a count to the price that follows from it, in the house of about 150 devices.
    private static async Task EditsAsync(IBrowser browser, string address)
    {
        var id = await SampleAsync(browser, address);
        var page = await browser.NewPageAsync();
        await page.GotoAsync($"{address}/jobs/{id}/rooms");
        await page.Locator(".price .mid button[data-n]").WaitForAsync();
        var times = new List<double>();
        for (var edit = 0; edit < Edits; edit++)
        {
            times.Add(await page.EvaluateAsync<double>(
                """
                async edit => {
                    const cells = [...document.querySelectorAll('main input.val')].filter(c => +c.value > 1);
                    const cell = cells[(edit >> 1) % cells.length];
                    const price = document.querySelector('section.price');
                    const before = price.querySelector('.why')?.textContent;
                    cell.value = +cell.value + (edit % 2 ? -1 : 1);
                    const start = performance.now();
                    cell.dispatchEvent(new Event('change', { bubbles: true }));
                    return await new Promise(done => {
                        const look = new MutationObserver(() => {
                            if (price.getAttribute('aria-busy') === 'false' && price.querySelector('.why')?.textContent !== before) { look.disconnect(); done(performance.now() - start); }
                        });
                        look.observe(price, { subtree: true, childList: true, characterData: true, attributes: true });
                    });
                }
                """,
                edit));
        }

        times.Sort();
        Console.WriteLine(FormattableString.Invariant($"edit to price           median {times[Edits / 2]:0} ms, p95 {times[Edits * 95 / 100]:0} ms over {Edits} edits"));
        await page.CloseAsync();
    }

    private static async Task TabsAsync(string name, IBrowser browser, string address, int process)
    {
        var before = Resident(process);
        var pages = new List<IPage>();
        for (var tab = 0; tab < Tabs; tab++)
        {
            var page = await browser.NewPageAsync();
            await page.GotoAsync(address);
            await page.Locator("h1").First.WaitForAsync();
            pages.Add(page);
        }

        await Task.Delay(TimeSpan.FromSeconds(5));
        var after = Resident(process);
        Console.WriteLine(FormattableString.Invariant($"{name,-24}{before:0} MB before, {after:0} MB with {Tabs} tabs, {(after - before) / Tabs:0.0} MB a tab"));
        foreach (var page in pages)
        {
            await page.CloseAsync();
        }
    }

    private static double Resident(int process)
    {
        var line = File.ReadLines($"/proc/{process}/status").First(l => l.StartsWith("VmRSS", StringComparison.Ordinal));
        return double.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) / 1024;
    }

    private static async Task<Process> TemplateAsync(string scratch)
    {
        var folder = Path.Combine(scratch, "Empty");
        await Command("new", "blazor", "--interactivity", "Server", "--all-interactive", "--empty", "-o", folder);
        await Command("build", folder, "-c", "Release", "-o", Path.Combine(folder, "out"));
        var started = Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(folder, "out", "Empty.dll"), "--urls", "http://127.0.0.1:5387"]) { WorkingDirectory = folder, UseShellExecute = false, RedirectStandardOutput = true })!;
        await started.StandardOutput.ReadLineAsync();
        await Task.Delay(TimeSpan.FromSeconds(3));
        return started;
    }

    private static async Task Command(params string[] words)
    {
        using var command = Process.Start(new ProcessStartInfo("dotnet", words) { UseShellExecute = false, RedirectStandardOutput = true })!;
        await command.StandardOutput.ReadToEndAsync();
        await command.WaitForExitAsync();
    }
}
