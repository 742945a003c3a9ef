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
    public static byte[] Write(JobEstimate estimate, Letterhead letterhead, JobPaper paper) => paper switch
    {
        JobPaper.Customer => CustomerPaper.Write(estimate, letterhead),
        JobPaper.Permit => PermitPaper.Write(estimate, letterhead),
        JobPaper.Crew => CrewPaper.Write(estimate, letterhead),
        JobPaper.Budget => BudgetPaper.Write(estimate, letterhead),
        _ => throw new ArgumentOutOfRangeException(nameof(paper), paper, "There is no such paper."),
    };
}
