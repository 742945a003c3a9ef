using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Estimator.Data.Companies;
using Estimator.Data.Contracts;
using Estimator.Data.Jobs;
using Estimator.Data.Revisions;
using Estimator.Documents;
using Estimator.Documents.Papers;
using Estimator.Documents.Pricing;
using Estimator.Documents.Purchase;
using Estimator.Documents.Tables;
using Estimator.Documents.Workbooks;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Web.Jobs;

namespace Estimator.Web.Revisions;

/// <summary>Hands out the documents of saved revisions; what was not saved is in no document.</summary>
public static class RevisionFiles
{
    /// <summary>Media type of a workbook.</summary>
    public const string Workbook = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    /// <summary>Media type of a table.</summary>
    public const string Table = "text/csv; charset=utf-8";

    /// <summary>Media type of a PDF.</summary>
    public const string Pdf = "application/pdf";

    private const string JobText = "application/json; charset=utf-8";

    private static readonly FrozenDictionary<string, (string Type, Func<RevisionPaper, Letterhead, byte[]> Write)> Known =
        new Dictionary<string, (string, Func<RevisionPaper, Letterhead, byte[]>)>
        {
            ["bid.xlsx"] = Of(JobWorkbook.Bid),
            ["customer.xlsx"] = Of(JobWorkbook.Customer),
            ["budget.xlsx"] = Of(JobWorkbook.Budget),
            ["purchase.xlsx"] = (Workbook, (paper, letterhead) => PurchaseWorkbook.Write(paper.Estimate.Purchase, [paper.Estimate], letterhead)),
            ["customer.pdf"] = Of(JobPaper.Customer),
            ["permit.pdf"] = Of(JobPaper.Permit),
            ["crew.pdf"] = Of(JobPaper.Crew),
            ["budget.pdf"] = Of(JobPaper.Budget),
            ["crew.xlsx"] = Of(JobWorkbook.Crew),
            ["permit.xlsx"] = Of(JobWorkbook.Permit),
            ["job.json"] = (JobText, (paper, _) => Encoding.UTF8.GetBytes(JobFile.Write(Kept(paper.Saved)))),
            ["takeoff.csv"] = Csv(JobTable.Takeoff),
            ["labor.csv"] = Csv(JobTable.Labor),
            ["purchase.csv"] = Csv(JobTable.Purchase),
            ["cut-plan.csv"] = Csv(JobTable.CutPlan),
            ["circuits.csv"] = Csv(JobTable.Circuits),
            ["panel-schedule.csv"] = Csv(JobTable.PanelSchedule),
            ["loads.csv"] = Csv(JobTable.Loads),
            ["devices.csv"] = Csv(JobTable.Devices),
            ["findings.csv"] = Csv(JobTable.Findings),
            ["range.csv"] = Csv(JobTable.Range),
            ["bid.csv"] = Csv(JobTable.Bid),
            ["pull-list.csv"] = Csv(JobTable.PullList),
            ["boxes.csv"] = Csv(JobTable.Boxes),
            ["box-contents.csv"] = Csv(JobTable.BoxContents),
            ["tools.csv"] = Csv(JobTable.Tools),
            ["tests.csv"] = Csv(JobTable.Tests),
            ["left-over.csv"] = Csv(JobTable.LeftOver),
            ["explanations.csv"] = Csv(JobTable.Explanations),
            ["alternates.csv"] = Csv(JobTable.Alternates),
            ["unit-prices.csv"] = Csv(JobTable.UnitPrices),
            ["schedule-of-values.csv"] = Csv(JobTable.ScheduleOfValues),
        }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Address of a document of a revision.</summary>
    public static string Address(string jobId, int revision, string file) =>
        string.Create(CultureInfo.InvariantCulture, $"/jobs/{Uri.EscapeDataString(jobId)}/revisions/{revision}/{file}");

    /// <summary>Maps the addresses.</summary>
    public static void MapRevisionFiles(this WebApplication app) => app.MapGet("/jobs/{jobId}/revisions/{number:int}/{file}", HandOutAsync);

    internal static async Task<IResult> HandOutAsync(
        string jobId, int number, string file, JobStore jobs, CompanyStore companies, EstimateShelf estimates, CancellationToken token)
    {
        if (!Known.TryGetValue(file, out var document) || await RevisionPaper.LoadAsync(jobs, estimates, jobId, number, token) is not { } paper)
        {
            return Results.NotFound();
        }

        if (!paper.Agrees)
        {
            return Results.Text(paper.Disagreement, "text/plain; charset=utf-8", Encoding.UTF8, StatusCodes.Status409Conflict);
        }

        var letterhead = paper.Letterhead(await companies.LoadAsync(token));
        var bytes = await Task.Run(() => document.Write(paper, letterhead), token);
        return Results.File(bytes, document.Type, string.Create(CultureInfo.InvariantCulture, $"{JobFileEndpoint.Stem(paper.Saved.Job.Name)}-revision-{number}-{file}"));
    }

    /// <summary>A document of a revision as it is now, for a customer; null where there is none of that name.</summary>
    internal static KeptDocument? Make(string file, RevisionPaper paper, CompanySettings company, string customer) =>
        Known.TryGetValue(file, out var document) ? new KeptDocument(file, document.Type, document.Write(paper, paper.Letterhead(company) with { Customer = customer })) : null;

    /// <summary>A table as bytes; the mark in front tells a spreadsheet that the text is UTF-8.</summary>
    public static byte[] TableBytes(string text) => [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text)];

    // With the catalogue in it, so that the price can be made again anywhere.
    private static Job Kept(SavedRevision saved) => saved.Job with
    {
        CatalogueSnapshot = saved.CatalogueFiles.ToImmutableSortedDictionary(f => f.Key, f => new CsvText(f.Value), StringComparer.Ordinal),
    };

    private static (string Type, Func<RevisionPaper, Letterhead, byte[]> Write) Of(JobWorkbook which) => (Workbook, (paper, letterhead) => JobWorkbooks.Write(paper.Estimate, letterhead, which, which is JobWorkbook.Customer ? CustomerOffer.Of(paper.Estimate, paper.Catalogue) : null));

    private static (string Type, Func<RevisionPaper, Letterhead, byte[]> Write) Of(JobPaper which) => (Pdf, (paper, letterhead) => JobPapers.Write(paper.Estimate, letterhead, which, which is JobPaper.Customer ? CustomerOffer.Of(paper.Estimate, paper.Catalogue) : null));

    private static (string Type, Func<RevisionPaper, Letterhead, byte[]> Write) Csv(JobTable table) => (Table, (paper, _) => TableBytes(JobTables.Write(paper.Estimate, table, paper.Catalogue)));
}
