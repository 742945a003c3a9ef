using Bunit;
using Estimator.Data.Contracts;
using Estimator.Engine.Contracts;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Web.Contracts;
using Estimator.Web.Explanations;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Web.Tests.Contracts;

public sealed class ContractPageTests : WebContext
{
    private ContractDesk Contracts => Services.GetRequiredService<ContractDesk>();

    [Fact]
    public async Task Schedule_OfTheBidInSight_AddsUpAndExplainsItself()
    {
        var priced = await OpenSampleAsync();
        var table = Render<ScheduleTable>(p => p.Add(s => s.Priced, priced));
        var values = table.FindAll("tbody button[data-n]").Select(b => decimal.Parse(b.TextContent.Trim('$'), System.Globalization.NumberStyles.Number, System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(priced.Estimate.Bid.Price.Value, values.Sum());
        table.Find("tbody button[data-n]").Click();
        var opened = Services.GetRequiredService<Explainer>().Opened!;
        Assert.NotEmpty(opened.Source.Book[opened.Node].Inputs);
    }

    [Fact]
    public async Task Term_TypedAndNonsense_IsStoredOrStays()
    {
        await OpenSampleAsync();
        var sheet = Render<TermsSheet>();
        Input(sheet, "Retainage, of the work done").Change("5");
        sheet.WaitForAssertion(() => Assert.Equal(5, Desk.Job.Payment?.RetainagePercent?.ToHundredths()));
        Input(sheet, "Deposit, of the price").Change("101");
        sheet.WaitForAssertion(() => Assert.Contains("accepted is 0 to 100 percent", sheet.Markup, StringComparison.Ordinal));
        Assert.Null(Desk.Job.Payment!.DepositPercent);
    }

    [Theory]
    [InlineData("Rough inspection passed 60%\nFinal, 40", null, 2)]
    [InlineData("Rough 60\nFinal 30%", "90%", 0)]
    [InlineData("=1+1", "Found “=1+1”", 0)]
    [InlineData("", null, 0)]
    public void Milestones_AsTyped_AreReadOrRefused(string text, string? problem, int count)
    {
        var read = MilestoneText.Read(text);
        Assert.Equal(problem is null, read.Ok);
        Assert.Contains(problem ?? "", read.Problem ?? "", StringComparison.Ordinal);
        Assert.Equal(count, read.Ok ? read.Value.Length : 0);
    }

    [Fact]
    public async Task Send_OfASavedRevision_KeepsItAndFreezesItsWiring()
    {
        var before = await OpenSampleAsync();
        Assert.Contains("save a revision", (await Contracts.SendAsync("", "", Contracts.Today)).Problem, StringComparison.Ordinal);
        await Desk.SaveRevisionAsync("", Token);
        var sent = await Contracts.SendAsync("Sample customer", "by hand", Contracts.Today);
        Assert.True(sent.Ok, sent.Problem);
        Assert.Equal(["customer.pdf", "customer.xlsx"], sent.Value.Documents.Select(d => d.File).Order(StringComparer.Ordinal));
        Assert.Equal(sent.Value.Revisions[0].Likely, sent.Value.Sent[0].Lines.Aggregate(Money.Zero, (sum, l) => sum + l.Value));
        Assert.NotEmpty(Desk.Job.Pins.Circuits);
        Assert.Equal((false, 0, Data.Jobs.JobState.Sent), (Desk.Provisional, Desk.EditsSinceRevision, Desk.State));
        Assert.Null(Desk.UndoTitle);
        var after = await PricedAsync();
        Assert.Equal(before.Estimate.Wiring.Runs.Length, after.Estimate.Wiring.Runs.Length);
    }

    // A receptacle that is not bought yet is money back; one that is in the wall is hours of taking it out.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Removal_OnceDevicesAreIn_GivesNothingBack(bool trimmed)
    {
        var contract = await WonAsync();
        if (trimmed)
        {
            Assert.True((await Contracts.NoteAsync(contract.Accepted!.Number, new(BidEventKind.RoughInPassed, Contracts.Today))).Ok);
            contract = (await Contracts.NoteAsync(contract.Accepted!.Number, new(BidEventKind.TrimmedOut, Contracts.Today))).Value;
        }

        var receptacle = Desk.Job.Levels.SelectMany(l => l.Rooms).SelectMany(r => r.Placed).Where(d => d.Kind is DeviceKind.DuplexReceptacle).Select(d => d.Id).Order(StringComparer.Ordinal).Last();
        await Desk.EditAsync("One receptacle less", j => Engine.Changes.Removing.Device(j, receptacle), Token);
        await Desk.SaveRevisionAsync("", Token);
        var change = Assert.Single((await Contracts.WriteChangeAsync(contract, "", null)).Value.Changes).Order;
        var device = change.Lines.First(l => l.Text.StartsWith("Duplex receptacle", StringComparison.Ordinal));
        Assert.Equal(trimmed, device.Amount > Money.Zero);
    }

    [Fact]
    public async Task Change_OfAWonJob_AddsUpLineByLineAndIsInvoiced()
    {
        var contract = await WonAsync();
        await Desk.EditAsync("One receptacle more", OneMore, Token);
        Assert.Contains("save a revision", (await Contracts.WriteChangeAsync(contract, "", null)).Problem, StringComparison.Ordinal);
        await Desk.SaveRevisionAsync("", Token);
        var written = await Contracts.WriteChangeAsync(contract, "Owner's wish", 2);
        Assert.True(written.Ok, written.Problem);
        var change = written.Value.Changes[0];
        Assert.Equal(change.Order.Price, change.Order.Lines.Aggregate(Money.Zero, (sum, l) => sum + l.Amount!.Value));
        Assert.True(change.Order.Price > Money.Zero && change.Order.Days == 2);
        Assert.Contains("receptacle", change.Order.Lines.Where(l => l.Kind is ChangeLineKind.Added).Select(l => l.Text).Aggregate((a, b) => $"{a} {b}"), StringComparison.OrdinalIgnoreCase);
        var noted = (await Contracts.NoteAsync(written.Value, change, new ChangeEvent(ChangeEventKind.Sent, Contracts.Today))).Value;
        noted = (await Contracts.NoteAsync(noted, noted.Changes[0], new ChangeEvent(ChangeEventKind.Accepted, Contracts.Today))).Value;
        Assert.Equal(noted.Accepted!.Likely + change.Order.Price, noted.Account!.Sum);
        var page = Render<InvoiceList>(p => p.Add(i => i.Contract, noted).Add(i => i.Account, noted.Account!));
        page.FindAll("input.share")[0].Change("120");
        page.FindAll("button").First(b => b.TextContent.Contains("Invoice the work done", StringComparison.Ordinal)).Click();
        page.WaitForAssertion(() => Assert.Contains("0 to 100%", page.Find("[role=alert]").TextContent, StringComparison.Ordinal));
        Assert.Empty((await Contracts.LoadAsync(Token)).Invoices);
    }

    [Fact]
    public async Task ChangeAndCompare_EachFigure_OpensItsExplanation()
    {
        var contract = await WonAsync();
        await Desk.EditAsync("One receptacle more", OneMore, Token);
        await Desk.SaveRevisionAsync("", Token);
        var change = (await Contracts.WriteChangeAsync(contract, "", null)).Value.Changes[0].Order;

        var page = Render<ChangePage>(p => p.Add(c => c.JobId, Desk.Job.Id).Add(c => c.Number, 1));
        page.WaitForAssertion(() => Assert.Equal(1 + change.Lines.Length, page.FindAll("button[data-n]").Count), TimeSpan.FromSeconds(20));
        page.Find("[data-change] button[data-n]").Click();
        Assert.Equal(change.Price.ToDollars(), Opened());

        Services.GetRequiredService<Microsoft.AspNetCore.Components.NavigationManager>().NavigateTo(ComparePage.Address(Desk.Job.Id, 1, 2));
        var compared = Render<ComparePage>(p => p.Add(c => c.JobId, Desk.Job.Id));
        compared.WaitForAssertion(() => Assert.True(compared.FindAll("button[data-n]").Count > 10), TimeSpan.FromSeconds(20));
        compared.FindAll("button[data-n]")[1].Click();
        Assert.Equal((await PricedAsync()).Estimate.Bid.Price.Value, Opened());
    }

    private decimal Opened()
    {
        var opened = Services.GetRequiredService<Explainer>().Opened!;
        Assert.NotEmpty(opened.Source.Book[opened.Node].Inputs);
        return opened.Source.Book[opened.Node].Value;
    }

    [Fact]
    public async Task Page_OfTextFromUsers_ShowsItAsText()
    {
        await WonAsync("<b>Evil</b>");
        var page = Render<ContractPage>(p => p.Add(c => c.JobId, Desk.Job.Id));
        page.WaitForAssertion(() => Assert.Contains("&lt;b&gt;Evil&lt;/b&gt;", page.Markup, StringComparison.Ordinal));
        Assert.Contains("license", page.Markup, StringComparison.OrdinalIgnoreCase);
    }

    private static Job OneMore(Job job)
    {
        var room = job.Levels[0].Rooms[0];
        return job with { Levels = [job.Levels[0] with { Rooms = [room with { Counts = [.. room.Counts, new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 1 }] }, .. job.Levels[0].Rooms[1..]] }, .. job.Levels[1..]] };
    }

    private static AngleSharp.Dom.IElement Input<T>(IRenderedComponent<T> page, string label)
        where T : Microsoft.AspNetCore.Components.IComponent => page.FindAll("label").First(l => l.TextContent.Trim() == label).ParentElement!.QuerySelector("input")!;

    private async Task<JobContract> WonAsync(string to = "Sample customer")
    {
        await OpenSampleAsync();
        await Desk.SaveRevisionAsync("", Token);
        Assert.True((await Contracts.SendAsync(to, "", Contracts.Today)).Ok);
        return (await Contracts.NoteAsync(1, new BidEvent(BidEventKind.Accepted, Contracts.Today))).Value;
    }
}
