using System.Globalization;
using Estimator.Documents.Workbooks;
using Estimator.Engine;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase;

namespace Estimator.Documents.Purchase;

/// <summary>The cut plan that a crew follows: coil by coil, piece by piece, where each goes and what is left on the coil after it.</summary>
internal static class CutSheet
{
    private const string Name = "Cut plan";
    private const int HeadRow = 4;
    private const int Last = 8;

    internal static void Write(WorkbookDraft draft, PurchasePlan plan, IReadOnlyList<JobEstimate> jobs, string names)
    {
        var page = draft.Add(Name);
        page.Columns(5, 5, 12, 12, 38, 38, 15, 30);
        page.Put(1, 1, $"Cut plan: {names}", page.Styles.Title);
        page.Put(2, 1, "Each run is one piece: cut no shorter than this, in this order. Make-up at both ends and slack are in the length. If the way on site differs, measure first.", page.Styles.Subtitle);
        page.Heads(HeadRow, "Done", ">Cut", ">Length, ft in", ">Left on coil, ft in", "  From", "  To", "  Carries", "  Run");
        var runs = CutRun.Of(jobs);
        var row = HeadRow + 1;
        foreach (var cut in plan.Cuts)
        {
            var description = plan.Lines.First(l => l.ItemId == cut.ItemId).Description;
            for (var c = 0; c < cut.Coils.Length; c++)
            {
                row = Coil(page, row, $"{description}: coil {c + 1} of {cut.Coils.Length}", cut.Coils[c], runs, jobs.Count);
            }

            foreach (var piece in cut.TooLong)
            {
                page.Put(row++, 1, $"{description}: {piece.Length} for {piece.Run} is longer than any coil offered.", page.Styles.Subtitle);
            }
        }

        page.Put(row + 1, 1, Cautions.AtWork, page.Styles.Subtitle);
        page.Put(row + 2, 1, Cautions.PlanningAid, page.Styles.Subtitle);
        page.Print(landscape: true, headingRows: HeadRow, repeatFrom: HeadRow);
    }

    private static int Coil(SheetPage page, int row, string title, CutCoil coil, Dictionary<string, CutRun> runs, int jobs)
    {
        var styles = page.Styles;
        page.Fill(row, 2, Last, styles.Band);
        page.Put(row++, 1, string.Create(CultureInfo.InvariantCulture, $"{title}, {coil.Offer.PackSize} ft, {coil.Pieces.Length} pieces, {coil.Left} stays on it"), styles.Band);
        var left = Length.FromFeet(coil.Offer.PackSize);
        for (var i = 0; i < coil.Pieces.Length; i++)
        {
            var piece = coil.Pieces[i];
            var run = CutRun.For(runs, piece);
            left -= piece.Length;
            page.Put(row, 1, "☐", styles.Soft);
            page.Put(row, 2, i + 1, styles.Number(SheetStyles.Whole));
            page.Put(row, 3, piece.Length.ToString(), styles.Number("@"));
            page.Put(row, 4, left.ToString(), styles.Number("@"));
            page.Put(row, 5, run.From, styles.Steps[1]);
            page.Put(row, 6, run.To, styles.Steps[1]);
            page.Put(row, 7, run.Role, styles.Steps[1]);
            page.Put(row++, 8, jobs == 1 ? piece.Run[(piece.Run.IndexOf(": ", StringComparison.Ordinal) + 2)..] : piece.Run, styles.Soft);
        }

        return row;
    }
}
