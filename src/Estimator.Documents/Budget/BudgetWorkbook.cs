using Estimator.Documents.Explanations;
using Estimator.Documents.Takeoff;
using Estimator.Documents.Workbooks;
using Estimator.Engine;

namespace Estimator.Documents.Budget;

/// <summary>An owner's budget: the range and what to ask whom, the material with prices to change, and how each figure was found.</summary>
public static class BudgetWorkbook
{
    /// <summary>The workbook as an .xlsx file. The same estimate gives the same bytes.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="letterhead">Whose it is.</param>
    public static byte[] Write(JobEstimate estimate, Letterhead letterhead)
    {
        using var draft = new WorkbookDraft("Budget", estimate.House.Job.Name, letterhead.Company);
        var bid = estimate.Bid;
        var index = new ExplanationIndex(
            estimate.Book,
            new[] { bid.Price, bid.Low, bid.High, estimate.Purchase.Total, estimate.Labor.Total, estimate.Takeoff.Openings }.Concat(estimate.Takeoff.Lines.Select(l => l.Quantity)).Select(f => f.Node));
        var budget = draft.Add(BudgetSheet.Name);
        TakeoffSheet.Write(draft, estimate, new LiveFormula(estimate.Book), index);
        new BudgetSheet(budget, estimate, index).Write(letterhead);
        ExplanationSheet.Write(draft, index);
        return draft.ToBytes();
    }
}
