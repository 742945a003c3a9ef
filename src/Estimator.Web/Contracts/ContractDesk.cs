using Estimator.Data.Companies;
using Estimator.Data.Contracts;
using Estimator.Data.Jobs;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Changes;
using Estimator.Engine.Contracts;
using Estimator.Engine.Measures;
using Estimator.Engine.Payments;
using Estimator.Web.Jobs;
using Estimator.Web.Revisions;

namespace Estimator.Web.Contracts;

/// <summary>The acts from a saved bid to the last payment. What is given to the customer is made once and kept byte for byte.</summary>
public sealed class ContractDesk(JobDesk desk, JobStore jobs, EstimateShelf estimates, ContractStore contracts, CompanyStore companies, TimeProvider clock)
{
    private static readonly string[] BidFiles = ["customer.pdf", "customer.xlsx"];

    /// <summary>The day today.</summary>
    public DateOnly Today => DateOnly.FromDateTime(clock.GetLocalNow().Date);

    /// <summary>All that there is of the job at hand.</summary>
    public Task<JobContract> LoadAsync(CancellationToken token = default) => contracts.LoadAsync(desk.Job.Id, token);

    /// <summary>Sends the job's last saved revision: keeps its documents, its schedule of values and its terms, and freezes its wiring.</summary>
    /// <param name="to">To whom.</param>
    /// <param name="how">How.</param>
    /// <param name="on">The day.</param>
    public async Task<Parsed<JobContract>> SendAsync(string to, string how, DateOnly on)
    {
        if (desk.LastRevision is not { } last || desk.Provisional)
        {
            return Parsed<JobContract>.Failure("The job was edited since it was saved: save a revision, then send that.");
        }

        var paper = (await RevisionPaper.LoadAsync(jobs, estimates, desk.Job.Id, last.Number))!;
        if (!paper.Agrees)
        {
            return Parsed<JobContract>.Failure(paper.Disagreement);
        }

        var company = await companies.LoadAsync();
        var plan = PaymentPlanning.Compute(paper.Estimate, PartsCatalogue.Read(paper.Saved.CatalogueFiles).Value);
        var documents = await Task.Run(() => BidFiles.Select(f => RevisionFiles.Make(f, paper, company, to.Trim())).OfType<KeptDocument>().ToList());
        var sent = await contracts.SendAsync(desk.Job.Id, new SentBid(last.Number, plan.Frozen, plan.Terms, paper.Estimate.Bid.ValidDays), new BidEvent(BidEventKind.Sent, on) { To = to, Text = how }, documents, JobDesk.Me);
        if (sent.Ok && desk.Version == last.JobVersion)
        {
            await desk.FreezeAsync($"Wiring frozen as in revision {last.Number}, which was sent", paper.Estimate);
        }

        await desk.RefreshAsync();
        return sent;
    }

    /// <summary>Notes what became of a bid. Where the rough-in passed or the devices are in, the wiring as it stands is frozen.</summary>
    /// <param name="revision">The revision.</param>
    /// <param name="happened">What happened.</param>
    public async Task<Parsed<JobContract>> NoteAsync(int revision, BidEvent happened)
    {
        var noted = await contracts.NoteAsync(desk.Job.Id, revision, happened, JobDesk.Me);
        if (noted.Ok && happened.Kind is (BidEventKind.RoughInPassed or BidEventKind.TrimmedOut))
        {
            await desk.FreezeAsync(happened.Kind is BidEventKind.RoughInPassed ? "Wiring frozen: the rough-in passed" : "Wiring frozen: the devices are in", (await desk.ThoroughAsync()).Estimate);
        }

        await desk.RefreshAsync();
        return noted;
    }

    /// <summary>Writes a change order from the revision that holds to the job's last saved one.</summary>
    /// <param name="contract">The contract as it was read.</param>
    /// <param name="reason">Why.</param>
    /// <param name="days">Working days that it adds; null takes the days of the crew that the hours come to.</param>
    public async Task<Parsed<JobContract>> WriteChangeAsync(JobContract contract, string reason, int? days)
    {
        if (desk.Provisional || contract.Holds is not { } holds || desk.LastRevision is not { } last)
        {
            return Parsed<JobContract>.Failure("The job was edited since it was saved: save a revision, then write the change order to it.");
        }

        var change = await ChangeAsync(holds, last.Number, Done(contract.Accepted?.Life), reason, days);
        return change.Ok ? await contracts.WriteChangeAsync(desk.Job.Id, change.Value, JobDesk.Me) : Parsed<JobContract>.Failure(change.Problem);
    }

    /// <summary>Notes what happened to a change order; where it is sent, its document is kept.</summary>
    public async Task<Parsed<JobContract>> NoteAsync(JobContract contract, StoredChange change, ChangeEvent happened) =>
        await contracts.NoteChangeAsync(desk.Job.Id, change.Number, happened, happened.Kind is ChangeEventKind.Sent ? [ContractFiles.Pdf(desk.Job.Name, contract, change, happened.On, await companies.LoadAsync())] : [], JobDesk.Me);

    /// <summary>Writes an invoice.</summary>
    public Task<Parsed<JobContract>> WriteInvoiceAsync(Func<ContractAccount, Parsed<Invoice>> make) => contracts.WriteInvoiceAsync(desk.Job.Id, make, JobDesk.Me);

    /// <summary>Notes what happened to an invoice; where it is sent, its documents are kept.</summary>
    public async Task<Parsed<JobContract>> NoteAsync(JobContract contract, StoredInvoice invoice, InvoiceEvent happened) =>
        await contracts.NoteInvoiceAsync(desk.Job.Id, invoice.Number, happened, happened.Kind is InvoiceEventKind.Sent ? ContractFiles.Of(desk.Job.Name, contract, invoice, happened.On, await companies.LoadAsync()) : [], JobDesk.Me);

    private static WorkDone Done(BidLife? life) =>
        life?.TrimmedOutOn is not null ? WorkDone.TrimmedOut : life?.RoughInOn is not null ? WorkDone.RoughedIn : WorkDone.Nothing;

    private async Task<Parsed<ChangeOrder>> ChangeAsync(int from, int to, WorkDone done, string reason, int? days)
    {
        var (before, after) = (await RevisionPaper.LoadAsync(jobs, estimates, desk.Job.Id, from), await RevisionPaper.LoadAsync(jobs, estimates, desk.Job.Id, to));
        return before is null || after is null ? Parsed<ChangeOrder>.Failure("A revision of it is gone.")
            : !after.Agrees ? Parsed<ChangeOrder>.Failure(after.Disagreement)
            : Parsed<ChangeOrder>.Success(await Task.Run(() => ChangeDraft.Of(before, after, done, reason, days)));
    }
}
