using Estimator.Documents.Budget;
using Estimator.Documents.Crew;
using Estimator.Documents.Permit;
using Estimator.Documents.Pricing;
using Estimator.Engine;

namespace Estimator.Documents.Workbooks;

/// <summary>Every workbook of an estimate.</summary>
public static class JobWorkbooks
{
    /// <summary>One workbook as an .xlsx file. The same estimate gives the same bytes.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="letterhead">Who sends it, to whom, when.</param>
    /// <param name="workbook">Which one.</param>
    /// <param name="offer">What the customer is offered beside the price; null for nothing.</param>
    public static byte[] Write(JobEstimate estimate, Letterhead letterhead, JobWorkbook workbook, CustomerOffer? offer = null) => workbook switch
    {
        JobWorkbook.Bid => BidWorkbook.Write(estimate, letterhead),
        JobWorkbook.Customer => CustomerWorkbook.Write(estimate, letterhead, offer),
        JobWorkbook.Budget => BudgetWorkbook.Write(estimate, letterhead),
        JobWorkbook.Crew => CrewWorkbook.Write(estimate, letterhead),
        JobWorkbook.Permit => PermitWorkbook.Write(estimate, letterhead),
        _ => throw new ArgumentOutOfRangeException(nameof(workbook), workbook, "There is no such workbook."),
    };
}
