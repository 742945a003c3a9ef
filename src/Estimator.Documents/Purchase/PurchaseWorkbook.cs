using Estimator.Documents.Explanations;
using Estimator.Documents.Workbooks;
using Estimator.Engine;
using Estimator.Engine.Purchase;

namespace Estimator.Documents.Purchase;

/// <summary>The purchase list as a workbook: what to order from each supplier, how coils are cut, and what is left over.</summary>
public static class PurchaseWorkbook
{
    /// <summary>The workbook as an .xlsx file. The same plan gives the same bytes.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="jobs">The jobs that it was made for. For one job a last sheet explains the figures; those of several stand in the bid workbook of each.</param>
    /// <param name="letterhead">Who buys.</param>
    public static byte[] Write(PurchasePlan plan, IReadOnlyList<JobEstimate> jobs, Letterhead letterhead)
    {
        var names = string.Join(", ", jobs.Select(j => j.House.Job.Name));
        using var draft = new WorkbookDraft("Purchase list", names, letterhead.Company);
        var index = jobs.Count == 1
            ? new ExplanationIndex(jobs[0].Book, plan.Lines.Select(l => l.Needed.Node).Concat(plan.Lines.Where(l => l.Cost is not null).Select(l => l.Cost!.Value.Node)).Append(plan.Total.Node))
            : null;
        OrderSheet.Write(draft, plan, names, letterhead, index);
        CutSheet.Write(draft, plan, jobs, names);
        SurplusSheet.Write(draft, plan, names);
        if (index is not null)
        {
            ExplanationSheet.Write(draft, index);
        }

        return draft.ToBytes();
    }
}
