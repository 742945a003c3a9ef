using System.Text.Json;
using Estimator.Engine.JobFiles;
using Microsoft.Playwright;

namespace Estimator.Browser.Tests;

/// <summary>Every text field of every page, found by walking the pages, takes what nobody should type: it is kept as text or refused with a sentence, and is never run.</summary>
/// <remarks>Source of the starts that a spreadsheet would run: OWASP, CSV Injection. Workbooks and tables of such texts are read back in the tests of Documents.</remarks>
public sealed class HostileTextTests(RunningPages pages)
{
    private const int LeastFields = 120;
    private const int LeastKept = 5;

    // A field that holds a number refuses all of them; one that holds a name keeps them.
    private static readonly string[] Texts =
    [
        "🔌⚡ 🏠👩‍🔧", new('x', 10_000), "=1+1", "@SUM(1)", "\u202Eright to left\u202C \u0000 \u200B", "<img src=x onerror=\"window.ran=1\"><b data-ran>x</b>",
    ];

    [Fact]
    public async Task TextField_OfAnyPage_KeepsOrRefusesWhatIsTyped()
    {
        await using var visit = await pages.OpenAsync(Screen.Desk);
        var id = await visit.StartSampleAsync("Basement finish");
        var job = $"/jobs/{Uri.EscapeDataString(id)}";
        var addresses = await visit.Page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('nav.run a[href]')].map(a => new URL(a.href).pathname)");
        var (fields, problems) = (0, new List<string>());
        foreach (var address in addresses.Append("/").Append("/catalogue").Append("/settings").Append("/budget").Distinct())
        {
            await visit.GoAsync(address);
            await visit.Page.WaitForTimeoutAsync(300);
            var found = await FieldsAsync(visit.Page);
            for (var field = 0; field < Math.Min(found, await FieldsAsync(visit.Page)); field++)
            {
                fields++;
                foreach (var text in Texts)
                {
                    await TypeAsync(visit.Page, field, text);
                }

                if (await BrokenAsync(visit.Page) is { } broken)
                {
                    problems.Add($"{address}, field {field}: {broken}");
                    await visit.GoAsync(address);
                }
            }
        }

        Assert.Empty(problems.Concat(visit.Faults));
        Assert.True(fields >= LeastFields, $"{fields} fields were found");
        var stored = await visit.Page.EvaluateAsync<string>("async address => await (await fetch(address)).text()", $"{job}/file");
        Assert.True(JobFile.Read(stored, "export.json").Ok);
        using var document = JsonDocument.Parse(stored);
        Assert.True(Strings(document.RootElement).Count(k => k.Contains("<b data-ran>", StringComparison.Ordinal)) >= LeastKept, "too few fields kept what was typed last");
    }

    // As a person who types or pastes and goes on; past the field's own limit, which only the browser holds.
    private static async Task TypeAsync(IPage page, int field, string text) => await page.EvaluateAsync(
        """
        async ([field, text]) => {
            const at = [...document.querySelectorAll(`main :is(input:not([type=checkbox],[type=radio],[type=file]), textarea)`)].filter(f => !f.disabled && !f.readOnly)[field];
            if (!at) return;
            at.focus();
            at.value = text;
            at.dispatchEvent(new Event('input', { bubbles: true }));
            at.dispatchEvent(new Event('change', { bubbles: true }));
            at.blur();
            // A person sees the page come to rest before the next act: what was typed into a field that is being replaced would go to nobody.
            await new Promise(go => {
                const done = () => { seen.disconnect(); go(); };
                let rest = setTimeout(done, 60);
                const seen = new MutationObserver(() => { clearTimeout(rest); rest = setTimeout(done, 60); });
                seen.observe(document.body, { subtree: true, childList: true, attributes: true, characterData: true });
                setTimeout(done, 2000);
            });
            window.ran ||= !!document.querySelector('[data-ran]');
        }
        """,
        new object[] { field, text });

    private static Task<int> FieldsAsync(IPage page) => page.EvaluateAsync<int>(
        "() => [...document.querySelectorAll(`main :is(input:not([type=checkbox],[type=radio],[type=file]), textarea)`)].filter(f => !f.disabled && !f.readOnly).length");

    private static Task<string?> BrokenAsync(IPage page) => page.EvaluateAsync<string?>(
        """
        () => window.ran || document.querySelector('[data-ran]') ? 'the text was run as HTML'
            : getComputedStyle(document.querySelector('#components-reconnect-modal')).display !== 'none' ? 'the page fell over'
            : document.querySelector('h1') ? null : 'the page is empty'
        """);

    private static IEnumerable<string> Strings(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p => Strings(p.Value)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Strings),
        JsonValueKind.String => [element.GetString()!],
        _ => [],
    };
}
