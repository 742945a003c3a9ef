using Estimator.Documents.Explanations;
using Estimator.Documents.Workbooks;
using Estimator.Engine;

namespace Estimator.Documents.Permit;

/// <summary>Load calculation and panel schedules as a workbook with live formulas, and how each figure was found.</summary>
public static class PermitWorkbook
{
    /// <summary>The workbook as an .xlsx file. The same estimate gives the same bytes.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="letterhead">Who hands it in.</param>
    public static byte[] Write(JobEstimate estimate, Letterhead letterhead)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        ArgumentNullException.ThrowIfNull(letterhead);
        using var draft = new WorkbookDraft("Load calculation", estimate.House.Job.Name, letterhead.Company);
        var index = new ExplanationIndex(estimate.Book, LoadSheet.Figures(estimate));
        new LoadSheet(draft.Add(LoadSheet.Name), estimate, new LiveFormula(estimate.Book), index).Write();
        new PanelSheet(draft.Add(PanelSheet.Name), estimate).Write();
        ExplanationSheet.Write(draft, index);
        return draft.ToBytes();
    }
}
