using Estimator.Documents.Workbooks;
using Estimator.Engine;

namespace Estimator.Documents.Pricing;

/// <summary>What a customer is sent and nothing else: no cost, no hour, no markup, in no sheet and no formula.</summary>
public static class CustomerWorkbook
{
    /// <summary>The workbook as an .xlsx file. The same estimate gives the same bytes.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="letterhead">Who sends it, to whom.</param>
    /// <param name="offer">What is offered beside the price; null for nothing.</param>
    public static byte[] Write(JobEstimate estimate, Letterhead letterhead, CustomerOffer? offer = null)
    {
        using var draft = new WorkbookDraft("Bid", estimate.House.Job.Name, letterhead.Company);
        CustomerSheet.Write(draft.Add(CustomerSheet.Name), estimate, letterhead, alone: true, offer);
        return draft.ToBytes();
    }
}
