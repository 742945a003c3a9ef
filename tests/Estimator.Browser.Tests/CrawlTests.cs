using Microsoft.Playwright;

namespace Estimator.Browser.Tests;

/// <summary>Every page of both samples, at a desk and on a phone, by day and by night: no fault, nothing asked of another machine, open to everybody.</summary>
public sealed class CrawlTests(RunningPages pages)
{
    [Theory]
    [InlineData("Basement finish", Screen.Desk, false)]
    [InlineData("Basement finish", Screen.Phone, true)]
    [InlineData("Two-storey house", Screen.Desk, true)]
    [InlineData("Two-storey house", Screen.Phone, false)]
    public async Task Page_OfASample_ShowsNoFault(string sample, Screen screen, bool night)
    {
        await using var visit = await pages.OpenAsync(screen, night);
        await visit.StartSampleAsync(sample);
        var problems = new List<string>();
        foreach (var address in await AddressesAsync(visit))
        {
            await visit.GoAsync(address);
            await visit.Page.WaitForTimeoutAsync(400);
            problems.AddRange((await visit.AccessibilityProblemsAsync()).Select(p => $"{address}: {p}"));
        }

        Assert.Empty(problems.Concat(visit.Faults));
    }

    [Theory]
    [InlineData("Basement finish")]
    [InlineData("Two-storey house")]
    public async Task Number_OfAPage_OpensDownToWhatWasStatedOrCited(string sample)
    {
        await using var visit = await pages.OpenAsync(Screen.Desk);
        await visit.StartSampleAsync(sample);
        var opened = 0;
        foreach (var address in (await AddressesAsync(visit)).Where(a => a.StartsWith("/jobs/", StringComparison.Ordinal)))
        {
            await visit.GoAsync(address);
            await visit.PriceAsync();
            // Numbers that stand one click away are opened as a reader would open them.
            await visit.Page.EvaluateAsync("() => document.querySelectorAll('main details').forEach(d => d.open = true)");
            var numbers = visit.Page.Locator("main button[data-n]");
            for (var i = 0; i < await numbers.CountAsync(); i++)
            {
                await numbers.Nth(i).ClickAsync();
                var tree = visit.Page.Locator("#explanation [role=tree]");
                await Assertions.Expect(numbers.Nth(i)).ToHaveAttributeAsync("aria-expanded", "true");
                Assert.NotEqual("", (await tree.InnerTextAsync()).Trim());
                opened++;
            }
        }

        Assert.True(opened > 10, $"only {opened} numbers were found");
        Assert.Empty(visit.Faults);
    }

    private static async Task<IReadOnlyList<string>> AddressesAsync(Visit visit)
    {
        var links = await visit.Page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('nav.run a[href]')].map(a => new URL(a.href).pathname)");
        Assert.NotEmpty(links);
        return [.. links.Distinct()];
    }
}
