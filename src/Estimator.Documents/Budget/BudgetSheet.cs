using System.Globalization;
using Estimator.Documents.Explanations;
using Estimator.Documents.House;
using Estimator.Documents.Takeoff;
using Estimator.Documents.Workbooks;
using Estimator.Engine;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;

namespace Estimator.Documents.Budget;

/// <summary>What an owner wants to know first: the range, what it is made of, what must be settled, whom to ask what.</summary>
internal sealed class BudgetSheet(SheetPage page, JobEstimate estimate, ExplanationIndex index)
{
    internal const string Name = "Budget";

    private int _row = 1;

    internal void Write(Letterhead letterhead)
    {
        var styles = page.Styles;
        page.Columns(26, 14, 66, 9);
        page.Put(_row++, 1, $"Budget: {estimate.House.Job.Name}", styles.Title);
        page.Put(_row++, 1, string.Join("  ·  ", new[] { letterhead.IssuedOn?.ToString("MMMM d, yyyy", CultureInfo.InvariantCulture) ?? "", letterhead.Revision.Length > 0 ? $"Revision {letterhead.Revision}" : "" }.Where(t => t.Length > 0)), styles.Subtitle);
        if (SamplePrices.In(estimate.Purchase))
        {
            Say("Not yet in dollars", Cautions.SamplePrices, styles.Warning);
        }

        Range();
        Parts();
        Settle();
        Ask();
        Section("Please note");
        foreach (var caution in Cautions.Safety.Add("A budget is a plan and no bid: ask firms for theirs."))
        {
            Say("", caution, styles.Body);
        }

        page.Print(landscape: false, headingRows: 0, repeatFrom: 0);
    }

    private void Range()
    {
        Section("What it may cost");
        Figure("Likely", estimate.Bid.Price, SheetStyles.Whole, "dollars, work and material, if it is built as drawn");
        Figure("Low end", estimate.Bid.Low, SheetStyles.Whole, "if all goes well");
        Figure("High end", estimate.Bid.High, SheetStyles.Whole, "if what is not known yet turns out badly");
    }

    private void Parts()
    {
        Section("What it is made of");
        page.Put(_row, 1, "Material as bought", page.Styles.Note);
        page.Live(_row, 2, TakeoffSheet.MaterialName, estimate.Purchase.Total.Value, page.Styles.Number(SheetStyles.Whole));
        page.Put(_row, 3, "dollars, without tax and delivery; your own prices go into the sheet Takeoff", page.Styles.Soft);
        page.Explained(_row++, 4, index[estimate.Purchase.Total.Node]);
        Figure("Work", estimate.Labor.Total, SheetStyles.Tenths, "hours");
        Figure("Openings", estimate.Takeoff.Openings, SheetStyles.Whole, "receptacles, switches, lights, alarms and equipment");
        page.Put(_row, 1, "New circuits", page.Styles.Note);
        page.Put(_row, 2, estimate.Wiring.Circuits.Length, page.Styles.Number(SheetStyles.Whole));
        page.Put(_row++, 3, string.Join("; ", estimate.Wiring.Circuits.Select(c => c.Name)), page.Styles.Body);
    }

    private void Settle()
    {
        var found = estimate.Findings.Where(f => f.Severity is Severity.Mandatory).ToList();
        var unknown = estimate.House.Job.Unknowns;
        if (found.Count + unknown.Length == 0)
        {
            return;
        }

        Section("To settle before it can be built");
        foreach (var finding in found)
        {
            Say(finding.Article.Length > 0 ? $"NEC {finding.Article}" : "", finding.Text, page.Styles.Body);
        }

        foreach (var open in unknown)
        {
            Say("Not known yet", open.Text.Length > 0 ? open.Text : PlaceWords.Kind(open.Topic), page.Styles.Body);
        }
    }

    private void Ask()
    {
        Section("What to ask the building department");
        foreach (var question in PermitQuestions.For(estimate.House.Job, ownerWorks: null))
        {
            Say("", question, page.Styles.Body);
        }

        Section("What to ask each firm");
        foreach (var question in FirmQuestions.All)
        {
            Say("", question, page.Styles.Body);
        }
    }

    private void Figure(string label, Fact figure, string format, string words)
    {
        page.Put(_row, 1, label, page.Styles.Note);
        page.Put(_row, 2, figure.Value, page.Styles.Number(format));
        page.Put(_row, 3, words, page.Styles.Soft);
        page.Explained(_row++, 4, index[figure.Node]);
    }

    private void Section(string title)
    {
        _row++;
        page.Put(_row, 1, title, page.Styles.Section);
        page.Fill(_row++, 2, 4, page.Styles.Section);
    }

    private void Say(string label, string text, CellLook look)
    {
        page.Put(_row, 1, label, page.Styles.Note);
        page.Across(_row++, 2, 3, text, look);
    }
}
