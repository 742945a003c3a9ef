using System.Globalization;
using Estimator.Documents.Workbooks;
using Estimator.Engine;
using Estimator.Engine.Purchase;

namespace Estimator.Documents.Purchase;

/// <summary>The cut plan that a crew follows: coil by coil, where to cut, where each piece goes and what is left on the coil.</summary>
internal sealed class CutSheet
{
    private const string Name = "Cut plan";
    private const int HeadRow = 4;
    private const int Last = 9;

    private readonly SheetPage _page;
    private readonly Dictionary<string, CutRun> _runs;
    private readonly int _jobs;
    private int _row = HeadRow + 1;

    private CutSheet(SheetPage page, IReadOnlyList<JobEstimate> jobs) => (_page, _runs, _jobs) = (page, CutRun.Of(jobs), jobs.Count);

    internal static void Write(WorkbookDraft draft, PurchasePlan plan, IReadOnlyList<JobEstimate> jobs, string names)
    {
        var sheet = new CutSheet(draft.Add(Name), jobs);
        var page = sheet._page;
        page.Columns(5, 5, 12, 13, 13, 36, 36, 14, 26);
        page.Put(1, 1, $"Cut plan: {names}", page.Styles.Title);
        page.Put(2, 1, "Each run is one piece, in this order. Make-up, slack and tolerance are in the length. Trim the free end square before each cut; marks count from the free end of the whole coil. If the way on site differs, measure first.", page.Styles.Subtitle);
        page.Heads(HeadRow, "Done", ">Cut", ">Length, ft in", ">Cut at mark, ft in", ">Left on coil, ft in", "  From", "  To", "  Carries", "  Run");
        foreach (var cut in plan.Cuts)
        {
            sheet.Cable(plan.Lines.First(l => l.ItemId == cut.ItemId).Description, cut);
        }

        page.Put(sheet._row + 1, 1, Cautions.AtWork, page.Styles.Subtitle);
        page.Put(sheet._row + 2, 1, Cautions.PlanningAid, page.Styles.Subtitle);
        page.Print(landscape: true, headingRows: HeadRow, repeatFrom: HeadRow);
    }

    private void Cable(string description, CutPlan cut)
    {
        if (!cut.Coils.IsEmpty)
        {
            _page.Across(_row++, 1, Last, $"{description}: {CutWords.Of(cut)}", _page.Styles.TotalText);
        }

        for (var c = 0; c < cut.Coils.Length; c++)
        {
            Coil($"{description}: coil {c + 1} of {cut.Coils.Length}", cut, cut.Coils[c]);
        }

        foreach (var piece in cut.TooLong)
        {
            _page.Put(_row++, 1, $"{description}: {piece.Length} for {piece.Run} is longer than any coil offered.", _page.Styles.Subtitle);
        }
    }

    private void Coil(string title, CutPlan cut, CutCoil coil)
    {
        var styles = _page.Styles;
        _page.Fill(_row, 2, Last, styles.Band);
        _page.Put(_row++, 1, string.Create(CultureInfo.InvariantCulture, $"{title}, {CutWords.Coil(coil)}, {coil.Pieces.Length} pieces, {coil.Left} stays on it{(cut.IsKept(coil) ? ": keep" : "")}"), styles.Band);
        var marks = coil.Marks;
        for (var i = 0; i < coil.Pieces.Length; i++)
        {
            var piece = coil.Pieces[i];
            var run = CutRun.For(_runs, piece);
            _page.Put(_row, 1, "☐", styles.Soft);
            _page.Put(_row, 2, i + 1, styles.Number(SheetStyles.Whole));
            _page.Put(_row, 3, piece.Length.ToString(), styles.Number("@"));
            _page.Put(_row, 4, marks[i].ToString(), styles.Number("@"));
            _page.Put(_row, 5, (coil.Length - marks[i]).ToString(), styles.Number("@"));
            _page.Put(_row, 6, run.From, styles.Steps[1]);
            _page.Put(_row, 7, run.To, styles.Steps[1]);
            _page.Put(_row, 8, run.Role, styles.Steps[1]);
            _page.Put(_row++, 9, _jobs == 1 ? piece.Run[(piece.Run.IndexOf(": ", StringComparison.Ordinal) + 2)..] : piece.Run, styles.Soft);
        }
    }
}
