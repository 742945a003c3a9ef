using System.Collections.Immutable;
using System.Globalization;
using Estimator.Data.Companies;
using Estimator.Data.Contracts;
using Estimator.Data.Jobs;
using Estimator.Documents;
using Estimator.Documents.Contracts;
using Estimator.Engine.Contracts;
using Estimator.Engine.Measures;
using Estimator.Engine.Payments;
using Estimator.Web.Jobs;
using Estimator.Web.Orders;
using Estimator.Web.Revisions;

namespace Estimator.Web.Contracts;

/// <summary>Hands out what was given to customers, byte for byte as it was given; of a draft, what would be given today.</summary>
public static class ContractFiles
{
    /// <summary>Name of an invoice as PDF.</summary>
    public const string InvoiceFile = "invoice.pdf";

    /// <summary>Name of an invoice as CSV.</summary>
    public const string InvoiceCsv = "invoice.csv";

    /// <summary>Name of a change order as PDF.</summary>
    public const string ChangeFile = "change.pdf";

    private const string PdfType = "application/pdf";

    /// <summary>Address of a document.</summary>
    public static string Address(string jobId, PaperKind paper, int number, string file) =>
        string.Create(CultureInfo.InvariantCulture, $"/jobs/{Uri.EscapeDataString(jobId)}/papers/{paper.ToString().ToLowerInvariant()}/{number}/{file}");

    /// <summary>Maps the addresses.</summary>
    public static void MapContractFiles(this WebApplication app) => app.MapGet("/jobs/{jobId}/papers/{paper}/{number:int}/{file}", HandOutAsync);

    internal static async Task<IResult> HandOutAsync(string jobId, string paper, int number, string file, ContractStore contracts, JobStore jobs, CompanyStore companies, TimeProvider clock, CancellationToken token)
    {
        if (!Enum.TryParse<PaperKind>(paper, ignoreCase: true, out var kind) || !Enum.IsDefined(kind) || await jobs.LoadAsync(jobId, token) is not { } stored)
        {
            return Results.NotFound();
        }

        var document = await contracts.DocumentAsync(jobId, kind, number, file, token)
            ?? Draft(stored.Job.Name, await contracts.LoadAsync(jobId, token), kind, number, DateOnly.FromDateTime(clock.GetLocalNow().Date), await companies.LoadAsync(token)).FirstOrDefault(d => d.File == file);
        return document is null
            ? Results.NotFound()
            : Results.File(document.Bytes, document.MediaType, string.Create(CultureInfo.InvariantCulture, $"{JobFileEndpoint.Stem(stored.Job.Name)}-{paper.ToLowerInvariant()}-{number}{Path.GetExtension(file)}"));
    }

    /// <summary>The documents of an invoice of a day.</summary>
    internal static ImmutableArray<KeptDocument> Of(string job, JobContract contract, StoredInvoice invoice, DateOnly on, CompanySettings company)
    {
        var paper = Paper(job, contract, invoice, on);
        return [new(InvoiceFile, PdfType, InvoicePdf.Write(paper, Head(contract, company, on))), new(InvoiceCsv, RevisionFiles.Table, RevisionFiles.TableBytes(InvoiceTable.Write(paper)))];
    }

    /// <summary>A change order of a day as PDF.</summary>
    internal static KeptDocument Pdf(string job, JobContract contract, StoredChange change, DateOnly on, CompanySettings company)
    {
        var before = (contract.Account?.Sum ?? Money.Zero) - (change.Order.State is ChangeState.Accepted ? change.Order.Price : Money.Zero);
        return new(ChangeFile, PdfType, ChangePdf.Write(new ChangePaper(job, change.Number, change.Order, on, before), Head(contract, company, on)));
    }

    private static InvoicePaper Paper(string job, JobContract contract, StoredInvoice invoice, DateOnly on)
    {
        var before = contract.Standing.TakeWhile(i => i.Number != invoice.Number).Aggregate(Money.Zero, (sum, i) => sum + i.Issued.Invoice.Due);
        var sum = invoice.Issued.Invoice.Lines.IsEmpty ? contract.Account!.Sum : invoice.Issued.Invoice.Lines.Aggregate(Money.Zero, (all, l) => all + l.Value);
        return new InvoicePaper(job, invoice.Number, invoice.Issued.Invoice, contract.Account!.Terms, on, sum, before);
    }

    private static IEnumerable<KeptDocument> Draft(string job, JobContract contract, PaperKind kind, int number, DateOnly today, CompanySettings company) => kind switch
    {
        PaperKind.Invoice => contract.Invoices.Where(i => i.Number == number && i.Issued.State is InvoiceState.Draft).SelectMany(i => Of(job, contract, i, today, company)),
        PaperKind.Change => contract.Changes.Where(c => c.Number == number && c.Order.State is ChangeState.Draft).Select(c => Pdf(job, contract, c, today, company)),
        _ => [],
    };

    private static Letterhead Head(JobContract contract, CompanySettings company, DateOnly on) => OrderFiles.Head(company, on) with { Customer = contract.Accepted?.Life.Events.LastOrDefault(e => e.To.Length > 0)?.To ?? "" };
}
