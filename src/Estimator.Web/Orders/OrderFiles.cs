using System.Collections.Frozen;
using System.Text;
using Estimator.Data.Companies;
using Estimator.Data.Jobs;
using Estimator.Documents;
using Estimator.Documents.Purchase;
using Estimator.Web.Jobs;
using Estimator.Web.Revisions;

namespace Estimator.Web.Orders;

/// <summary>Hands out what several jobs buy together, of the last saved revision of each.</summary>
public static class OrderFiles
{
    private static readonly FrozenDictionary<string, (string Type, Func<JointOrder, Letterhead, byte[]> Write)> Known =
        new Dictionary<string, (string, Func<JointOrder, Letterhead, byte[]>)>
        {
            ["order.xlsx"] = (RevisionFiles.Workbook, (order, letterhead) => PurchaseWorkbook.Write(order.Plan, [.. order.Papers.Select(p => p.Estimate)], letterhead)),
            ["order.csv"] = (RevisionFiles.Table, (order, _) => RevisionFiles.TableBytes(PurchaseTables.Purchase(order.Plan))),
            ["cut-plan.csv"] = (RevisionFiles.Table, (order, _) => RevisionFiles.TableBytes(PurchaseTables.CutPlan(order.Plan, [.. order.Papers.Select(p => p.Estimate)]))),
        }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Maps the addresses.</summary>
    public static void MapOrderFiles(this WebApplication app) => app.MapGet("/order/{file}", HandOutAsync);

    /// <summary>The last saved revision of each job; a job that has none is left away.</summary>
    public static async Task<IReadOnlyList<RevisionPaper>> PapersAsync(IEnumerable<string> jobIds, JobStore jobs, EstimateShelf estimates, CancellationToken token)
    {
        List<RevisionPaper> papers = [];
        foreach (var id in jobIds.Distinct(StringComparer.Ordinal))
        {
            var last = (await jobs.RevisionsAsync(id, token)).Select(r => r.Number).DefaultIfEmpty(0).Max();
            if (await RevisionPaper.LoadAsync(jobs, estimates, id, last, token) is { } paper)
            {
                papers.Add(paper);
            }
        }

        return papers;
    }

    internal static async Task<IResult> HandOutAsync(
        string file, string[] job, string? phase, string? way, string? preferred, string? within, string? shelf, OrderDesk desk, CompanyStore companies, CancellationToken token)
    {
        if (!Known.TryGetValue(file, out var document) || await desk.MakeAsync(OrderAsk.Of(job, phase, way, preferred, within, shelf), token) is not var (order, _))
        {
            return Results.NotFound();
        }

        if (order.Papers.FirstOrDefault(p => !p.Agrees) is { } wrong)
        {
            return Results.Text($"{wrong.Saved.Job.Name}: {wrong.Disagreement}", "text/plain; charset=utf-8", Encoding.UTF8, StatusCodes.Status409Conflict);
        }

        var letterhead = Head(await companies.LoadAsync(token), desk.Today);
        return Results.File(await Task.Run(() => document.Write(order, letterhead), token), document.Type, file);
    }

    internal static Letterhead Head(CompanySettings company, DateOnly today) => new()
    {
        Company = company.Name,
        CompanyLines = [.. company.AddressLines.Append(company.Licence).Where(line => line.Length > 0)],
        IssuedOn = today,
    };
}
