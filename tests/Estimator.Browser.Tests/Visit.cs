using System.Collections.Concurrent;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Estimator.Browser.Tests;

/// <summary>A window on the pages. Whatever goes wrong in it is kept: errors of the console, requests off this machine, failed ones.</summary>
public sealed class Visit : IAsyncDisposable
{
    private readonly ConcurrentQueue<string> _faults = [];
    private readonly RunningServer _server;

    internal Visit(IPage page, RunningServer server)
    {
        (Page, _server) = (page, server);
        var address = server.Address;
        page.Console += (_, m) => Note(m.Type is "error", $"console: {m.Text}");
        page.PageError += (_, e) => Note(true, $"page: {e}");
        page.Request += (_, r) => Note(!r.Url.StartsWith(address, StringComparison.Ordinal) && !r.Url.StartsWith("data:", StringComparison.Ordinal) && !r.Url.StartsWith("blob:", StringComparison.Ordinal), $"request off this machine: {r.Url}");
        page.Response += (_, r) => Note(r.Status >= 400, $"{r.Status}: {r.Url}");
    }

    public IPage Page { get; }

    public IEnumerable<string> Faults => _faults;

    /// <summary>Goes to an address of the program and waits until it answers to keys and clicks.</summary>
    public async Task GoAsync(string path)
    {
        await Page.GotoAsync($"{_server.Address}{path}");
        await Page.Locator("h1").First.WaitForAsync();
    }

    /// <summary>Starts a job from a sample and waits for its price.</summary>
    /// <returns>The job's id.</returns>
    public async Task<string> StartSampleAsync(string title)
    {
        await GoAsync("/");
        await Page.GetByRole(AriaRole.Button, new() { Name = title }).ClickAsync();
        try
        {
            await Page.WaitForURLAsync("**/jobs/*/overview");
        }
        catch (TimeoutException e)
        {
            throw new InvalidOperationException($"{title} was not started. Faults: {string.Join("; ", Faults)}\nThe page: {await Page.InnerTextAsync("body")}\nThe program: {_server.LastWords}", e);
        }

        await PriceAsync();
        return Uri.UnescapeDataString(new Uri(Page.Url).Segments[2].TrimEnd('/'));
    }

    /// <summary>Chooses a file, once the page listens for one: its script is set up a moment after the field is drawn.</summary>
    public async Task ChooseFileAsync(string path)
    {
        await Page.WaitForFunctionAsync("() => document.querySelector('input[type=file]')?._blazorInputFileNextFileId !== undefined");
        await Page.Locator("input[type=file]").SetInputFilesAsync(path);
    }

    /// <summary>The likely price as the strip shows it, in whole dollars.</summary>
    public async Task<decimal> PriceAsync()
    {
        var figure = Page.Locator(".price .mid button[data-n]");
        await figure.WaitForAsync();
        return decimal.Parse((await figure.InnerTextAsync()).Trim('$', ' '), System.Globalization.NumberStyles.Number, System.Globalization.CultureInfo.InvariantCulture);
    }

    /// <summary>What the accessibility rules of WCAG 2.2 AA and best practice find, as text.</summary>
    public async Task<IReadOnlyList<string>> AccessibilityProblemsAsync()
    {
        var result = await Page.RunAxe(new AxeRunOptions { ResultTypes = [ResultType.Violations] });
        return [.. result.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id}: {v.Help}: {n.Html}"))];
    }

    public async ValueTask DisposeAsync() => await Page.Context.CloseAsync();

    private void Note(bool wrong, string text)
    {
        if (wrong)
        {
            _faults.Enqueue(text);
        }
    }
}
