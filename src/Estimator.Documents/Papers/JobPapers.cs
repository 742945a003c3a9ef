using Estimator.Documents.Budget;
using Estimator.Documents.Crew;
using Estimator.Documents.Permit;
using Estimator.Documents.Pricing;
using Estimator.Engine;

namespace Estimator.Documents.Papers;

/// <summary>Every paper of an estimate.</summary>
public static class JobPapers
{
    /// <summary>One paper as a .pdf file. The same estimate gives the same bytes.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="letterhead">Who sends it, to whom, when.</param>
    /// <param name="paper">Which one.</param>
    /// <param name="offer">What the customer is offered beside the price; null for nothing.</param>
    public static byte[] Write(JobEstimate estimate, Letterhead letterhead, JobPaper paper, CustomerOffer? offer = null) => paper switch
    {
        JobPaper.Customer => CustomerPaper.Write(estimate, letterhead, offer),
        JobPaper.Permit => PermitPaper.Write(estimate, letterhead),
        JobPaper.Crew => CrewPaper.Write(estimate, letterhead),
        JobPaper.Budget => BudgetPaper.Write(estimate, letterhead),
        _ => throw new ArgumentOutOfRangeException(nameof(paper), paper, "There is no such paper."),
    };
}
