using System.Globalization;
using Microsoft.Playwright;

namespace Estimator.Browser.Tests;

/// <summary>The contractor offers more than was asked for: alternates, a package of them and unit prices; the customer takes one, and the price rises by what was said.</summary>
public sealed class AlternatesJourneyTests(RunningPages pages)
{
    [Theory]
    [InlineData(Screen.Desk)]
    [InlineData(Screen.Phone)]
    public async Task Contractor_WithAlternates_OffersThemAndTakesOne(Screen screen)
    {
        await using var visit = await pages.OpenAsync(screen);
        var page = visit.Page;
        ILocator Button(string name) => page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });
        var id = await visit.StartSampleAsync("Basement finish");
        await visit.GoAsync($"/jobs/{Uri.EscapeDataString(id)}/bid");
        var price = await visit.PriceAsync();

        var form = page.GetByRole(AriaRole.Group, new() { Name = "Add an alternate" });
        await form.GetByLabel("What").SelectOptionAsync("More receptacles");
        await form.GetByLabel("Room").SelectOptionAsync("Family room");
        await form.GetByLabel("How many").FillAsync("3");
        await Button("Add alternate").ClickAsync();
        var table = page.GetByRole(AriaRole.Table, new() { Name = "Alternates", Exact = true });
        await table.Locator("tbody tr").First.WaitForAsync();
        await form.GetByLabel("What").SelectOptionAsync("Outlet for an electric vehicle");
        await form.GetByLabel("Room").SelectOptionAsync("Mechanical room");
        await Button("Add alternate").ClickAsync();
        await Assertions.Expect(table.Locator("tbody tr")).ToHaveCountAsync(2);

        var package = page.GetByRole(AriaRole.Group, new() { Name = "Add a package" });
        await package.GetByLabel("Package").FillAsync("Better");
        await package.GetByRole(AriaRole.Checkbox, new() { Name = "1", Exact = true }).CheckAsync();
        await package.GetByRole(AriaRole.Checkbox, new() { Name = "2", Exact = true }).CheckAsync();
        await Button("Add package").ClickAsync();
        var more = await AmountAsync(table.Locator("tbody tr").First.Locator("td").Nth(4));
        var both = page.GetByRole(AriaRole.Table, new() { Name = "Packages of alternates" }).Locator("tbody tr").First.Locator("td").Nth(4);
        Assert.InRange(await AmountAsync(both), more + 1, price);
        Assert.Equal(price, await visit.PriceAsync());

        await Button("Work out unit prices").ClickAsync();
        var units = page.GetByRole(AriaRole.Table, new() { Name = "Unit prices for later adds" });
        await Assertions.Expect(units).ToContainTextAsync("One more receptacle");
        await Assertions.Expect(units).ToContainTextAsync("One more circuit of its own");
        Assert.Empty(await visit.AccessibilityProblemsAsync());

        await Button("Take Family room: 3 more receptacles").ClickAsync();
        await Assertions.Expect(table.Locator("tbody tr")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator(".price .mid button[data-n]")).ToHaveTextAsync((price + more).ToString("$#,0", CultureInfo.InvariantCulture));
        Assert.Empty(visit.Faults);
    }

    private static async Task<decimal> AmountAsync(ILocator cell)
    {
        var number = cell.Locator("button[data-n]");
        await number.WaitForAsync();
        return decimal.Parse((await number.InnerTextAsync()).Trim('$', ' '), NumberStyles.Number, CultureInfo.InvariantCulture);
    }
}
