using System.Collections.Immutable;
using System.Globalization;
using Estimator.Documents.Workbooks;
using Estimator.Engine.Purchase.Orders;

namespace Estimator.Documents.Orders;

/// <summary>A purchase order as a workbook of one sheet, ready to be sent. A changed price or number of packs changes the total.</summary>
public static class PurchaseOrderWorkbook
{
    private const string Name = "Order";
    private const int HeadRow = 9;
    private const int Last = 9;
    private const int Cost = 8;

    /// <summary>The workbook as an .xlsx file. The same order gives the same bytes.</summary>
    /// <param name="paper">The order.</param>
    /// <param name="letterhead">Who buys.</param>
    public static byte[] Write(OrderPaper paper, Letterhead letterhead)
    {
        ArgumentNullException.ThrowIfNull(paper);
        ArgumentNullException.ThrowIfNull(letterhead);
        using var draft = new WorkbookDraft($"Purchase order {paper.Number}", string.Join(", ", paper.Jobs), letterhead.Company);
        var page = draft.Add(Name);
        page.Columns(4, 18, 46, 7, 9, 7, 12, 12, 22);
        Head(page, paper, letterhead);
        page.Heads(HeadRow, ">Line", "  Your number", "Item", ">Packs", ">In a pack", "  Unit", ">Price of a pack, $", ">Cost, $", "  Standing");
        var row = HeadRow + 1;
        foreach (var line in paper.Order.Standing)
        {
            Line(page, row++, line);
        }

        Sums(page, row, paper.Order);
        page.Print(landscape: true, headingRows: HeadRow, repeatFrom: HeadRow);
        return draft.ToBytes();
    }

    private static void Head(SheetPage page, OrderPaper paper, Letterhead letterhead)
    {
        page.Put(1, 1, $"Purchase order {paper.Number}", page.Styles.Title);
        page.Put(2, 1, string.Join("  ·  ", new[] { letterhead.Company }.Concat(letterhead.CompanyLines).Append(letterhead.IssuedOn is { } day ? Day(day) : "").Where(s => s.Length > 0)), page.Styles.Subtitle);
        page.Put(3, 1, $"To: {string.Join(", ", new[] { paper.Supplier, paper.Contact }.Where(s => s.Length > 0))}{(paper.Account.Length > 0 ? $"  ·  our account {paper.Account}" : "")}", page.Styles.Subtitle);
        page.Put(4, 1, $"Job: {(paper.Jobs.IsEmpty ? "not stated" : string.Join(", ", paper.Jobs))}{(paper.Phase.Length > 0 ? $"  ·  {paper.Phase}" : "")}", page.Styles.Subtitle);
        page.Put(5, 1, $"{paper.Way}{(paper.NeedBy is { } by ? $"  ·  needed by {Day(by)}" : "")}", page.Styles.Subtitle);
        page.Across(7, 1, Last, paper.Note.Length > 0 ? paper.Note : "Quote our order number on slip and invoice. Ask before anything is substituted.", page.Styles.Note);
    }

    private static void Line(SheetPage page, int row, LineStanding standing)
    {
        var (line, styles, packs) = (standing.Line, page.Styles, standing.Line.Packs - standing.Cancelled);
        page.Put(row, 1, line.Line, styles.Number(SheetStyles.Whole));
        page.Put(row, 2, line.Number, styles.Soft);
        page.Put(row, 3, line.Description, styles.Text);
        page.Input(row, 4, packs, SheetStyles.Whole);
        page.Put(row, 5, line.PackSize, styles.Number(SheetStyles.Whole));
        page.Put(row, 6, line.Unit == "foot" ? "ft" : "ea", styles.Soft);
        page.Input(row, 7, line.PackPrice.ToDollars(), SheetStyles.UnitDollars);
        page.Live(row, Cost, $"ROUND(D{row}*G{row},2)", line.CostOf(packs).ToDollars(), styles.Number(SheetStyles.Dollars));
        page.Put(row, 9, string.Join(", ", Told(standing)), styles.Soft);
    }

    private static void Sums(SheetPage page, int row, PurchaseOrder order)
    {
        var delivery = order.State is OrderState.Cancelled ? 0 : order.Delivery.ToDollars();
        ImmutableArray<(string What, decimal Dollars)> further = [("Delivery", delivery), ("Substitutes", order.Substitutes.ToDollars()), ("Restocking charges", order.Restocking.ToDollars()), ("Credits", -order.Credits.ToDollars())];
        page.Fill(row, 1, Last, page.Styles.TotalText);
        page.Put(row, 3, "Goods", page.Styles.TotalText);
        page.Live(row, Cost, string.Create(CultureInfo.InvariantCulture, $"SUM(H{HeadRow + 1}:H{row - 1})"), order.Goods.ToDollars(), page.Styles.Number(SheetStyles.Dollars, SheetStyles.Tone.Total));
        var first = row++;
        foreach (var (what, dollars) in further.Where(f => f.Dollars != 0))
        {
            page.Put(row, 3, what, page.Styles.Text);
            page.Input(row++, Cost, dollars, SheetStyles.Dollars);
        }

        page.Fill(row, 1, Last, page.Styles.TotalText);
        page.Put(row, 3, "Comes to, without tax", page.Styles.TotalText);
        page.Live(row, Cost, string.Create(CultureInfo.InvariantCulture, $"SUM(H{first}:H{row - 1})"), order.Total.ToDollars(), page.Styles.Number(SheetStyles.Dollars, SheetStyles.Tone.Total));
        page.CallIt("OrderTotal", row, Cost);
        page.Across(row + 2, 1, Last, "Breakers must be listed for the panel's make and series: check the label on its door before they are put in.", page.Styles.Note);
        page.Across(row + 3, 1, Last, Cautions.AtWork, page.Styles.Note);
    }

    private static IEnumerable<string> Told(LineStanding l)
    {
        (int Packs, string What)[] told = [(l.Received, "came"), (l.BackOrdered, "on back-order"), (l.Cancelled, "cancelled"), (l.Returned, "returned")];
        return told.Where(t => t.Packs > 0).Select(t => string.Create(CultureInfo.InvariantCulture, $"{t.Packs} {t.What}"));
    }

    private static string Day(DateOnly day) => day.ToString("MMMM d, yyyy", CultureInfo.InvariantCulture);
}
