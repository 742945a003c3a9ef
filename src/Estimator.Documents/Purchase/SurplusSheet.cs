using System.Globalization;
using Estimator.Documents.Workbooks;
using Estimator.Engine.Purchase;

namespace Estimator.Documents.Purchase;

/// <summary>What is left over when the jobs are done: pieces of opened packs, and the ends of coils.</summary>
internal static class SurplusSheet
{
    private const string Name = "Left over";
    private const int HeadRow = 4;

    internal static void Write(WorkbookDraft draft, PurchasePlan plan, string names)
    {
        var page = draft.Add(Name);
        var styles = page.Styles;
        page.Columns(58, 12, 12, 14, 6, 22);
        page.Put(1, 1, $"Left over: {names}", styles.Title);
        page.Put(2, 1, "Whole packs and coils cost less than the exact number, or are all that is sold. Cut cable does not go back.", styles.Subtitle);
        page.Heads(HeadRow, "Item", ">Bought or taken", ">Needed", ">Left over", "  Unit", "  What to do");
        var row = HeadRow + 1;
        foreach (var line in plan.Lines.Where(l => l.Left > 0 && l.Unit != "foot"))
        {
            page.Put(row, 1, line.Description, styles.Text);
            page.Put(row, 2, line.Packs.Sum(p => p.Count * p.Offer.PackSize) + line.FromStock, styles.Number(SheetStyles.Whole));
            page.Put(row, 3, line.Needed.Value, styles.Number(SheetStyles.Whole));
            page.Put(row, 4, line.Left, styles.Number(SheetStyles.Whole));
            page.Put(row, 5, "ea", styles.Soft);
            page.Put(row++, 6, WhatToDo(line), styles.Soft);
        }

        foreach (var cut in plan.Cuts)
        {
            var description = plan.Lines.First(l => l.ItemId == cut.ItemId).Description;
            for (var c = 0; c < cut.Coils.Length; c++)
            {
                page.Put(row, 1, string.Create(CultureInfo.InvariantCulture, $"{description}: end of coil {c + 1} of {cut.Coils.Length}"), styles.Text);
                page.Put(row, 2, cut.Coils[c].Length.ToString(), styles.Number("@"));
                page.Put(row, 3, "", styles.Number(SheetStyles.Whole));
                page.Put(row, 4, cut.Coils[c].Left.ToString(), styles.Number("@"));
                page.Put(row, 5, "ft", styles.Soft);
                page.Put(row++, 6, WhatToDo(cut, cut.Coils[c]), styles.Soft);
            }
        }

        page.Across(row + 1, 1, 6, Cautions.PlanningAid, styles.Note);
        page.Print(landscape: false, headingRows: HeadRow, repeatFrom: HeadRow);
    }

    internal static string WhatToDo(CutPlan cut, CutCoil coil) => cut.IsKept(coil) ? "keep for the next job" : "too short to keep";

    internal static string WhatToDo(PurchaseLine line) =>
        line.Packs.IsEmpty ? "stays on the shelf"
        : line.Packs.Any(line.GoesBack) ? "whole packs can go back"
        : line.Packs.All(p => !p.Offer.Returnable) ? "not taken back: keep"
        : "opened pack: keep";
}
