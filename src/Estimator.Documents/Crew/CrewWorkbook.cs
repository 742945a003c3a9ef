using Estimator.Documents.Purchase;
using Estimator.Documents.Workbooks;
using Estimator.Engine;

namespace Estimator.Documents.Crew;

/// <summary>What a crew works by, as a workbook: pull list, cut plan, device and box schedules, tools and consumables, test sheet.</summary>
public static class CrewWorkbook
{
    /// <summary>The workbook as an .xlsx file. The same estimate gives the same bytes.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="letterhead">Whose crew it is.</param>
    public static byte[] Write(JobEstimate estimate, Letterhead letterhead)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        ArgumentNullException.ThrowIfNull(letterhead);
        using var draft = new WorkbookDraft("Crew package", estimate.House.Job.Name, letterhead.Company);
        var sheets = new CrewSheets(draft, estimate);
        sheets.PullList();
        CutSheet.Write(draft, estimate.Purchase, [estimate], estimate.House.Job.Name);
        sheets.Devices();
        sheets.Boxes();
        sheets.Kit();
        sheets.Tests();
        return draft.ToBytes();
    }
}
