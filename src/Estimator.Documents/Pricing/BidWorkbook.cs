using Estimator.Documents.Explanations;
using Estimator.Documents.Labor;
using Estimator.Documents.Takeoff;
using Estimator.Documents.Workbooks;
using Estimator.Engine;
using Estimator.Engine.Explanations;

namespace Estimator.Documents.Pricing;

/// <summary>The bid workbook: what a customer is sent, cost to price with live formulas, takeoff, labor, and how each figure was found.</summary>
public static class BidWorkbook
{
    /// <summary>The workbook as an .xlsx file. The same estimate gives the same bytes.</summary>
    /// <param name="estimate">The estimate.</param>
    /// <param name="letterhead">Who sends it, to whom.</param>
    public static byte[] Write(JobEstimate estimate, Letterhead letterhead)
    {
        using var draft = new WorkbookDraft("Bid", estimate.House.Job.Name, letterhead.Company);
        var index = new ExplanationIndex(estimate.Book, Figures(estimate));
        var formulas = new LiveFormula(estimate.Book);

        // The sheets stand in the order of reading; Cost is written last, because its formulas point at the totals of Takeoff and Labor.
        var customer = draft.Add(CustomerSheet.Name);
        var cost = draft.Add(CostSheet.Name);
        CustomerSheet.Write(customer, estimate, letterhead, alone: false);
        TakeoffSheet.Write(draft, estimate, formulas, index);
        LaborSheet.Write(draft, estimate, formulas, index);
        CostSheet.Write(cost, estimate, formulas, index);
        RangeSheet.Write(draft.Add(RangeSheet.Name), estimate, index);
        ExplanationSheet.Write(draft, index);
        return draft.ToBytes();
    }

    private static IEnumerable<NodeRef> Figures(JobEstimate estimate)
    {
        var bid = estimate.Bid;
        return new[] { bid.Price, bid.Low, bid.High, bid.HourCost, bid.MarkupPercent, bid.MarginPercent, bid.PricePerOpening, bid.PricePerSquareFoot, bid.DirectTotal }
            .Concat(bid.DirectCost.Concat(bid.Additions).Select(l => l.Amount))
            .Concat(estimate.Takeoff.Lines.Select(l => l.Quantity))
            .Concat(estimate.Labor.Lines.Select(l => l.Hours)).Concat(estimate.Labor.ByPhase.Values)
            .Select(f => f.Node).Concat(CostSheet.Rates(bid).Select(n => n.Ref)).Concat(RangeSheet.Figures(bid.Range));
    }
}
