using Bunit;
using Estimator.Data.Companies;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Web.Jobs;
using Estimator.Web.Settings;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Web.Tests.Settings;

public sealed class SettingsPageTests : WebContext
{
    private CompanyStore Store => Services.GetRequiredService<CompanyStore>();

    [Theory]
    [InlineData("Invented Wiring")]
    [InlineData("=1+1 @SUM <b>bold</b> \U0001F4A1")]
    public async Task Save_Name_StoredAndOnTheLetterheadAsText(string name)
    {
        var page = Render<SettingsPage>();

        await page.Find("input").ChangeAsync(new() { Value = name });
        await page.Find("button.act").ClickAsync(new());

        Assert.Equal(name, (await Store.LoadAsync(Token)).Name);
        page.WaitForAssertion(() => Assert.Equal(name, page.Find(".letterhead b").TextContent));
    }

    [Fact]
    public async Task Save_RateThatCannotBeRead_StoresNothingAndSaysWhatIsAccepted()
    {
        var page = Render<SettingsPage>();
        var version = (await Store.LoadAsync(Token)).Version;

        await page.Find(".fields input").ChangeAsync(new() { Value = "much" });
        await page.Find("button.act").ClickAsync(new());

        Assert.Contains("0 to 1,000 is accepted", page.Markup, StringComparison.Ordinal);
        Assert.Equal(version, (await Store.LoadAsync(Token)).Version);
    }

    [Fact]
    public async Task Save_SomebodyWasFaster_OverwritesNothing()
    {
        var page = Render<SettingsPage>();
        await Store.SaveAsync(await Store.LoadAsync(Token) with { Name = "Theirs" }, Token);

        await page.Find("input").ChangeAsync(new() { Value = "Mine" });
        await page.Find("button.act").ClickAsync(new());

        Assert.Contains("Somebody else", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Equal("Theirs", (await Store.LoadAsync(Token)).Name);
    }

    [Fact]
    public async Task NewJob_StartsWithTheRatesOfTheSettings()
    {
        var page = Render<SettingsPage>();
        await page.Find(".fields input").ChangeAsync(new() { Value = "41.25" });
        await page.Find("button.act").ClickAsync(new());

        var jobs = Render<JobsPage>();
        await jobs.FindAll("button.act").Single(b => b.TextContent.Trim() == "New job").ClickAsync(new());

        var store = Services.GetRequiredService<Data.Jobs.JobStore>();
        var made = Assert.Single(await store.ListAsync(Data.Jobs.JobFilter.All, Token));
        Assert.Equal(41.25m, (await store.LoadAsync(made.Id, Token))!.Job.Bid.ElectricianWage!.Value.ToDollars());
    }

    [Fact]
    public async Task NewJob_StartsWithTheTermsOfTheSettings()
    {
        var page = Render<SettingsPage>();
        await page.InvokeAsync(() => Typed(page, "Retainage, of the work done").ChangeAsync(new() { Value = "7.5" }));
        await page.InvokeAsync(() => Typed(page, "Due after an invoice").ChangeAsync(new() { Value = "15.5" }));
        await page.Find("button.act").ClickAsync(new());
        Assert.Contains("accepted are whole days", page.Markup, StringComparison.Ordinal);
        await page.InvokeAsync(() => Typed(page, "Due after an invoice").ChangeAsync(new() { Value = "30" }));
        await page.Find("button.act").ClickAsync(new());

        var jobs = Render<JobsPage>();
        await jobs.FindAll("button.act").Single(b => b.TextContent.Trim() == "New job").ClickAsync(new());

        var store = Services.GetRequiredService<Data.Jobs.JobStore>();
        var made = Assert.Single(await store.ListAsync(Data.Jobs.JobFilter.All, Token));
        var payment = (await store.LoadAsync(made.Id, Token))!.Job.Payment!;
        Assert.Equal((7.5m, 30, null), (payment.RetainagePercent!.Value.ToHundredths(), payment.DaysToPay, payment.DepositPercent));
    }

    private static AngleSharp.Dom.IElement Typed(IRenderedComponent<SettingsPage> page, string label)
    {
        var named = page.FindAll("label").First(l => l.TextContent.Contains(label, StringComparison.Ordinal));
        return named.GetAttribute("for") is { Length: > 0 } id ? page.Find($"#{id}") : named.QuerySelector("input")!;
    }

    [Fact]
    public void Rates_EachAtItsHighest_AreWhatAJobMayHold()
    {
        var rates = RateField.All.Aggregate(new BidSettings { ProfitBasis = ProfitBasis.Margin }, (r, field) => field.Take(r, field.Most.ToString(System.Globalization.CultureInfo.InvariantCulture)).Value);

        var reading = JobFile.Read(JobFile.Write(JobStarts.Blank("Job") with { Bid = rates }), "job.json");

        Assert.True(reading.Ok, string.Join('\n', reading.Problems));
    }
}
