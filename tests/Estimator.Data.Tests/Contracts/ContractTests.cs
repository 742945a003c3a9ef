using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using Estimator.Data.Contracts;
using Estimator.Data.Jobs;
using Estimator.Data.Revisions;
using Estimator.Data.Tests.Databases;
using Estimator.Engine;
using Estimator.Engine.Contracts;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Payments;
using Estimator.TestKit;
using Microsoft.Extensions.DependencyInjection;
using static Estimator.Data.Tests.Jobs.Editing;

namespace Estimator.Data.Tests.Contracts;

/// <summary>From a sent bid to the last payment, on either database.</summary>
public abstract class ContractTests(TestDatabase database)
{
    private const string Id = "bedroom";

    private static readonly DateOnly Monday = new(2026, 3, 2);
    private static readonly ImmutableSortedDictionary<string, string> Files = Catalogues.ShippedFiles.ToImmutableSortedDictionary(StringComparer.Ordinal);
    private static readonly Job Bedroom = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 4), (DeviceKind.CeilingLight, 1)) with { Id = Id };
    private static readonly JobEstimate Estimate = SmallJobs.Estimate(Bedroom);
    private static readonly KeptDocument Paper = new("bid.pdf", "application/pdf", Encoding.UTF8.GetBytes("as it was sent\0"));
    private static readonly SentBid Offer = new(1, [new("rough_in", "=Rough-in", Dollars(600.25m)), new("trim_out", "Trim-out", Dollars(399.75m))], new(Dollars(100), 5, 15, 1.5m), 30);
    private static readonly ChangeOrder Change = new(1, 2, [new(ChangeLineKind.Added, "Receptacle", 1, "each", null), new(ChangeLineKind.Credit, "Switch left out", 1, "each", Dollars(-20.5m))], Dollars(120.75m), 1, "Owner's wish", []);

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Send_KeepsOfferAndDocumentsForEver()
    {
        var (services, store) = await SavedAsync();
        var sent = (await store.SendAsync(Id, Offer, new(BidEventKind.Sent, Monday) { To = "Customer", Text = "by mail" }, [Paper], Who, Token)).Value;
        var again = await store.SendAsync(Id, Offer with { Lines = [], ValidDays = 5 }, new(BidEventKind.Sent, Monday.AddDays(1)), [Paper with { Bytes = [1] }], Who, Token);
        Assert.Equal(sent.Sent[0].Lines, again.Value.Sent[0].Lines);
        var contract = await store.LoadAsync(Id, Token);
        Assert.Equal((Offer.Terms, 30), (contract.Sent.Single().Terms, contract.Revisions[1].Life.ValidDays));
        Assert.Equal(Offer.Lines, contract.Sent[0].Lines);
        Assert.Equal(("Customer", "by mail", Monday), (contract.Revisions[1].Life.Events[0].To, contract.Revisions[1].Life.Events[0].Text, contract.Revisions[1].Life.SentOn!.Value.AddDays(-1)));
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(Paper.Bytes)), Assert.Single(contract.Documents).Sha256);
        Assert.Equal(Paper.Bytes, (await store.DocumentAsync(Id, PaperKind.Bid, 1, "bid.pdf", Token))!.Bytes);
        Assert.Null(await store.DocumentAsync(Id, PaperKind.Change, 1, "bid.pdf", Token));
        Assert.Empty((await (await database.NewCompanyAsync()).GetRequiredService<ContractStore>().LoadAsync(Id, Token)).Documents);
        Assert.Equal(JobState.Sent, (await services.GetRequiredService<JobStore>().LoadAsync(Id, Token))!.State);
    }

    [Fact]
    public async Task States_OfJobAndRevision_FollowWhatIsNoted()
    {
        var (services, store) = await SavedAsync();
        Assert.Contains("send it first", (await store.NoteAsync(Id, 1, new(BidEventKind.Accepted, Monday), Who, Token)).Problem, StringComparison.Ordinal);
        await store.SendAsync(Id, Offer, new(BidEventKind.Sent, Monday), [Paper], Who, Token);
        await store.NoteAsync(Id, 1, new(BidEventKind.Declined, Monday.AddDays(2)), Who, Token);
        Assert.Equal(JobState.Lost, await StateAsync());
        await store.SendAsync(Id, Offer with { Revision = 2 }, new(BidEventKind.Sent, Monday.AddDays(4)), [Paper], Who, Token);
        Assert.Equal(JobState.Sent, await StateAsync());
        var won = (await store.NoteAsync(Id, 2, new(BidEventKind.Accepted, Monday.AddDays(5)), Who, Token)).Value;
        Assert.Equal((JobState.Won, 2, 2), (await StateAsync(), won.Accepted!.Number, won.Holds));
        Assert.Equal([BidState.Accepted, BidState.Declined], won.Revisions.Select(r => r.Life.State(Monday)));
        Assert.Contains("contract already", (await store.SendAsync(Id, Offer, new(BidEventKind.Sent, Monday), [], Who, Token)).Problem, StringComparison.Ordinal);
        await services.GetRequiredService<JobStore>().SetStateAsync(Id, JobState.Finished, Token);
        Assert.NotNull((await store.NoteAsync(Id, 2, new(BidEventKind.RoughInPassed, Monday.AddDays(9)), Who, Token)).Value.Accepted!.Life.RoughInOn);
        Assert.Equal(Monday.AddDays(30), (await store.NoteAsync(Id, 2, new(BidEventKind.TrimmedOut, Monday.AddDays(30)), Who, Token)).Value.Accepted!.Life.TrimmedOutOn);
        Assert.Equal(JobState.Finished, await StateAsync());
        Assert.NotNull((await store.NoteAsync(Id, 7, new(BidEventKind.Declined, Monday), Who, Token)).Problem);
        Assert.NotNull((await store.NoteAsync(Id, 2, new(BidEventKind.RoughInPassed, Monday) { Text = new string('x', ContractLimits.Note + 1) }, Who, Token)).Problem);

        async Task<JobState> StateAsync() => (await services.GetRequiredService<JobStore>().LoadAsync(Id, Token))!.State;
    }

    [Fact]
    public async Task Change_Accepted_IsALineOfTheContract()
    {
        var (_, store) = await WonAsync();
        Assert.NotNull((await store.WriteChangeAsync(Id, Change with { From = 2, To = 1 }, Who, Token)).Problem);
        var written = (await store.WriteChangeAsync(Id, Change, Who, Token)).Value.Changes.Single();
        Assert.Equal((1, Change.Price, 1, Change.Reason), (written.Number, written.Order.Price, written.Order.Days, written.Order.Reason));
        Assert.Equal(Change.Lines, written.Order.Lines);
        Assert.Contains("Change order 1 is open", (await store.WriteChangeAsync(Id, Change, Who, Token)).Problem, StringComparison.Ordinal);
        await store.NoteChangeAsync(Id, 1, new(ChangeEventKind.Sent, Monday), [Paper with { File = "change.pdf" }], Who, Token);
        var contract = (await store.NoteChangeAsync(Id, 1, new(ChangeEventKind.Accepted, Monday.AddDays(1)) { Text = "signed" }, [], "Kim", Token)).Value;
        Assert.Equal((2, 1120.75m, "change-1"), (contract.Holds, contract.Account!.Sum.ToDollars(), contract.Account.Lines[^1].Id));
        Assert.Equal([Who, "Kim"], contract.Changes[0].Noted);
        Assert.NotNull(await store.DocumentAsync(Id, PaperKind.Change, 1, "change.pdf", Token));
        Assert.Contains("revision 2 holds", (await store.WriteChangeAsync(Id, Change, Who, Token)).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Invoices_FromDepositToFinal_AddUpToTheContract()
    {
        var (_, store) = await WonAsync();
        var deposit = (await store.WriteInvoiceAsync(Id, a => a.DepositInvoice(), Who, Token)).Value.Invoices[0];
        Assert.Equal((100m, InvoiceState.Draft), (deposit.Issued.Invoice.Due.ToDollars(), deposit.Issued.State));
        await store.NoteInvoiceAsync(Id, deposit.Number, new(InvoiceEventKind.Sent, Monday), [Paper], Who, Token);
        var paid = await store.NoteInvoiceAsync(Id, deposit.Number, new(InvoiceEventKind.Paid, Monday.AddDays(3)) { Amount = Dollars(40), Text = "check 7" }, [], Who, Token);
        Assert.Equal((InvoiceState.PaidInPart, 60m), (paid.Value.Invoices[0].Issued.State, paid.Value.Invoices[0].Issued.Open.ToDollars()));
        var rough = (await store.WriteInvoiceAsync(Id, a => a.Progress(new Dictionary<string, Money> { ["rough_in"] = Dollars(600.25m) }), Who, Token)).Value;
        Assert.Equal((60.03m, 30.01m, 510.21m), (rough.Invoices[1].Issued.Invoice.DepositApplied.ToDollars(), rough.Invoices[1].Issued.Invoice.Retained.ToDollars(), rough.Invoices[1].Issued.Invoice.Due.ToDollars()));
        Assert.NotNull((await store.NoteInvoiceAsync(Id, deposit.Number, new(InvoiceEventKind.Withdrawn, Monday), [], Who, Token)).Problem);
        var last = (await store.WriteInvoiceAsync(Id, a => a.Final(), Who, Token)).Value;
        Assert.Equal((0m, 1000m, true), (last.Account!.Open.ToDollars(), last.Account.Asked.ToDollars(), last.Account.Closed));
        Assert.Equal([deposit.Number, deposit.Number + 1, deposit.Number + 2], last.Invoices.Select(i => i.Number));
        var withdrawn = (await store.NoteInvoiceAsync(Id, deposit.Number + 2, new(InvoiceEventKind.Withdrawn, Monday), [], Who, Token)).Value;
        Assert.Equal((3, 2, false), (withdrawn.Invoices.Length, withdrawn.Standing.Count(), withdrawn.Account!.Closed));
        Assert.Equal(rough.Account!.Open, withdrawn.Account.Open);
    }

    [Fact]
    public async Task Invoice_ByManyAtTheSameTime_BillsNothingTwice()
    {
        var (_, store) = await WonAsync();
        var written = await Task.WhenAll(Enumerable.Range(1, 5).Select(_ => Task.Run(() => store.WriteInvoiceAsync(Id, a => a.Progress(new Dictionary<string, Money> { ["rough_in"] = Dollars(600.25m) }), Who, Token))));
        Assert.Single(written, w => w.Ok);
        Assert.Equal(600.25m, (await store.LoadAsync(Id, Token)).Account!.Work.ToDollars());
    }

    [Fact]
    public async Task Accept_ByManyAtTheSameTime_IsNotedOnce()
    {
        var (_, store) = await SavedAsync();
        await store.SendAsync(Id, Offer, new(BidEventKind.Sent, Monday), [Paper], Who, Token);
        var noted = await Task.WhenAll(Enumerable.Range(1, 5).Select(_ => Task.Run(() => store.NoteAsync(Id, 1, new(BidEventKind.Accepted, Monday), Who, Token))));
        Assert.Single(noted, n => n.Ok);
        Assert.Equal(2, (await store.LoadAsync(Id, Token)).Accepted!.Life.Events.Length);
    }

    [Fact]
    public async Task Delete_OfAJob_TakesItsContractAlong()
    {
        var (services, store) = await WonAsync();
        await store.WriteChangeAsync(Id, Change, Who, Token);
        await store.WriteInvoiceAsync(Id, a => a.DepositInvoice(), Who, Token);
        var jobs = services.GetRequiredService<JobStore>();
        await jobs.SetArchivedAsync(Id, true, Token);
        Assert.True(await jobs.DeleteAsync(Id, Token));
        var left = await store.LoadAsync(Id, Token);
        Assert.True(left.Revisions.IsEmpty && left.Sent.IsEmpty && left.Changes.IsEmpty && left.Invoices.IsEmpty && left.Documents.IsEmpty);
    }

    private static Money Dollars(decimal dollars) => Money.FromDollars(dollars);

    private async Task<(ServiceProvider Services, ContractStore Store)> SavedAsync()
    {
        var services = await database.NewCompanyAsync();
        var jobs = services.GetRequiredService<JobStore>();
        await jobs.CreateAsync(Bedroom, Who, Token);
        foreach (var note in new[] { "first", "second" })
        {
            await jobs.SaveRevisionAsync(Id, new NewRevision(0, Estimate, Files, note, Who), Token);
        }

        return (services, services.GetRequiredService<ContractStore>());
    }

    private async Task<(ServiceProvider Services, ContractStore Store)> WonAsync()
    {
        var (services, store) = await SavedAsync();
        await store.SendAsync(Id, Offer, new(BidEventKind.Sent, Monday), [Paper], Who, Token);
        Assert.True((await store.NoteAsync(Id, 1, new(BidEventKind.Accepted, Monday), Who, Token)).Ok);
        return (services, store);
    }
}
