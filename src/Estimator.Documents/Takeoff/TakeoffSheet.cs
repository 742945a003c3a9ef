using Estimator.Documents.Explanations;
using Estimator.Documents.House;
using Estimator.Documents.Workbooks;
using Estimator.Engine;
using Estimator.Engine.Purchase;
using Estimator.Engine.Takeoff;

namespace Estimator.Documents.Takeoff;

/// <summary>What is needed, in which packs it is bought, and what it costs. A changed price of a pack changes the price of the job.</summary>
internal static class TakeoffSheet
{
    internal const string Name = "Takeoff";

    /// <summary>Name of the cell that holds the material.</summary>
    internal const string MaterialName = "Material";

    private const int HeadRow = 4;
    private const string NoPrice = "no price";

    private static readonly string[] Order =
        ["cable", "conduit", "wire", "box", "device", "luminaire", "alarm", "equipment", "plate", "breaker", "connector", "fastener", "bore", "bend", "panel", "service", "consumable", "site", "missing"];

    internal static void Write(WorkbookDraft draft, JobEstimate estimate, LiveFormula formulas, ExplanationIndex index)
    {
        var page = draft.Add(Name);
        var styles = page.Styles;
        page.Columns(40, 24, 8, 5, 6, 7.5, 10, 9, 8, 8, 9.5, 8.5, 13, 9);
        page.Put(1, 1, $"Takeoff: {estimate.House.Job.Name}", styles.Title);
        page.Put(2, 1, "Quantities and packs come from the plan. Copper figures may be changed and the price follows; the packs stay as chosen until the job is estimated again.", styles.Subtitle);
        page.Heads(HeadRow, "Item", "For rooms or circuits", ">Needed", "  Unit", ">Packs", ">Units in a pack", "  Supplier", ">Price of a pack, $", ">Bought, units", ">Left over, units", ">Material, $", ">Cost of a unit, $", "  Price is", ">Explained in row");
        var row = HeadRow + 1;
        var rooms = estimate.House.Rooms.ToDictionary(r => r.Source.Id, PlaceWords.Room, StringComparer.Ordinal);
        var bought = new HashSet<string>(StringComparer.Ordinal);
        foreach (var category in estimate.Takeoff.Lines.GroupBy(l => l.Category).OrderBy(g => Array.IndexOf(Order, g.Key)))
        {
            page.Fill(row, 2, 14, styles.Band);
            page.Put(row++, 1, $"{category.Key[..1].ToUpperInvariant()}{category.Key[1..]}", styles.Band);
            foreach (var line in category)
            {
                var purchase = line.OwnerSupplied || !bought.Add(line.ItemId) ? null : estimate.Purchase.Lines.FirstOrDefault(p => p.ItemId == line.ItemId);
                row = Line(page, row, line, purchase, rooms, index);
            }
        }

        page.Limit(HeadRow + 1, row, 8);
        page.Fill(row, 2, 14, styles.TotalText);
        page.Put(row, 1, "Material as bought", styles.TotalText);
        page.Live(row, 11, $"SUM(K{HeadRow + 1}:K{row - 1})", estimate.Purchase.Total.Value, styles.Number(SheetStyles.Dollars, SheetStyles.Tone.Total));
        page.Explained(row, 14, index[estimate.Purchase.Total.Node], total: true);
        page.CallIt(MaterialName, row, 11);
        formulas.Holds(estimate.Purchase.Total.Node, MaterialName);
        Notes(page, row + 2, estimate);
        page.Print(landscape: true, headingRows: HeadRow, repeatFrom: HeadRow);
    }

    private static int Line(SheetPage page, int row, TakeoffLine line, PurchaseLine? purchase, Dictionary<string, string> rooms, ExplanationIndex index)
    {
        var styles = page.Styles;
        page.Fill(row, 5, 13, styles.Text);
        page.Put(row, 1, line.Description, styles.Text);
        page.Put(row, 2, string.Join(", ", line.Where.Select(w => rooms.GetValueOrDefault(w, w))), styles.Soft);
        page.Put(row, 3, line.Quantity.Value, styles.Number(line.Unit == "foot" ? SheetStyles.Tenths : SheetStyles.Whole));
        page.Put(row, 4, line.Unit == "foot" ? "ft" : "ea", styles.Soft);
        page.Explained(row, 14, index[line.Quantity.Node]);
        if (purchase is null)
        {
            page.Put(row, 13, line.OwnerSupplied ? "the owner supplies it" : "for hours alone", styles.Soft);
            return row + 1;
        }

        return purchase.Cost is { } cost ? Packs(page, row, purchase, cost.Value.ToDollars()) : Unpriced(page, row, line);
    }

    private static int Packs(SheetPage page, int first, PurchaseLine purchase, decimal cost)
    {
        var styles = page.Styles;
        var row = first;
        foreach (var pack in purchase.Packs)
        {
            if (row > first)
            {
                page.Fill(row, 1, 14, styles.Text);
                page.Put(row, 1, $"{purchase.Description}, in a further pack", styles.Soft);
            }

            page.Put(row, 5, pack.Count, styles.Number(SheetStyles.Whole));
            page.Put(row, 6, pack.Offer.PackSize, styles.Number(SheetStyles.Whole));
            page.Put(row, 7, pack.Offer.Supplier, styles.Soft);
            page.Input(row, 8, pack.Offer.Price.ToDollars(), SheetStyles.UnitDollars);
            page.Put(row, 13, pack.Offer.Note, styles.Soft);
            row++;
        }

        var last = Math.Max(first, row - 1);
        var units = purchase.Packs.Sum(p => p.Count * p.Offer.PackSize);
        page.Live(first, 9, Products(first, last, "F"), units, styles.Number(SheetStyles.Whole));
        page.Put(first, 10, purchase.Left, styles.Number(purchase.Unit == "foot" ? SheetStyles.Tenths : SheetStyles.Whole));
        page.Live(first, 11, $"ROUND({Products(first, last, "H")},2)", cost, styles.Number(SheetStyles.Dollars));
        if (units > 0)
        {
            page.Live(first, 12, $"K{first}/I{first}", cost / units, styles.Number("#,##0.00##"));
        }

        return last + 1;
    }

    // A price typed here is for one unit, and is taken for all that are needed.
    private static int Unpriced(SheetPage page, int row, TakeoffLine line)
    {
        var styles = page.Styles;
        page.Live(row, 5, $"ROUNDUP(C{row},0)", decimal.Ceiling(line.Quantity.Value), styles.Number(SheetStyles.Whole));
        page.Put(row, 6, 1, styles.Number(SheetStyles.Whole));
        page.Input(row, 8, null, SheetStyles.UnitDollars);
        page.Live(row, 11, $"IF(H{row}=\"\",\"{NoPrice}\",ROUND(E{row}*H{row},2))", NoPrice, styles.Number(SheetStyles.Dollars));
        page.Put(row, 13, "nobody offers it: type what one unit costs", styles.Warning);
        return row + 1;
    }

    private static string Products(int first, int last, string column) =>
        first == last ? $"E{first}*{column}{first}" : $"SUMPRODUCT(E{first}:E{last},{column}{first}:{column}{last})";

    private static void Notes(SheetPage page, int row, JobEstimate estimate)
    {
        List<string> notes = [.. estimate.Purchase.Cuts.Where(c => !c.TooLong.IsEmpty).Select(c => $"No price yet, in no total: {c.TooLong.Length} run(s) of {c.ItemId} longer than any coil.")];
        if (SamplePrices.In(estimate.Purchase))
        {
            notes.Add(Cautions.SamplePrices);
        }

        notes.Add(Cautions.PlanningAid);

        foreach (var note in notes)
        {
            page.Put(row++, 1, note, page.Styles.Subtitle);
        }
    }
}
