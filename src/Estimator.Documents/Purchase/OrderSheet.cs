using System.Globalization;
using Estimator.Documents.Explanations;
using Estimator.Documents.Workbooks;
using Estimator.Engine.Purchase;

namespace Estimator.Documents.Purchase;

/// <summary>What to order, supplier by supplier, each on a page of its own. A changed price changes the totals.</summary>
internal sealed class OrderSheet
{
    private const string Name = "Order";
    private const int HeadRow = 4;
    private const int Last = 10;

    private readonly SheetPage _page;
    private readonly PurchasePlan _plan;
    private readonly ExplanationIndex? _index;
    private readonly List<int> _totals = [];
    private int _row = HeadRow + 1;

    private OrderSheet(SheetPage page, PurchasePlan plan, ExplanationIndex? index) => (_page, _plan, _index) = (page, plan, index);

    internal static void Write(WorkbookDraft draft, PurchasePlan plan, string jobs, Letterhead letterhead, ExplanationIndex? index) =>
        new OrderSheet(draft.Add(Name), plan, index).Write(jobs, letterhead);

    private void Write(string jobs, Letterhead letterhead)
    {
        _page.Columns(5, 50, 7, 8, 11, 11, 9, 6, 20, 10);
        _page.Put(1, 1, $"Purchase list: {jobs}", _page.Styles.Title);
        var who = string.Join("  ·  ", new[] { letterhead.Company }.Concat(letterhead.CompanyLines).Where(s => s.Length > 0));
        _page.Put(2, 1, who.Length > 0 ? who : "Whole packs and coils at least cost. Copper prices may be changed and the totals follow; the packs stay as chosen.", _page.Styles.Subtitle);
        _page.Heads(HeadRow, "Got", "Item", ">Packs", ">Units in a pack", ">Price of a pack, $", ">Cost, $", ">Units", "  Unit", "  Price is", _index is null ? "" : ">Explained in row");
        var suppliers = _plan.Lines.SelectMany(l => l.Packs.Select(p => (Line: l, Pack: p))).GroupBy(x => x.Pack.Offer.Supplier, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal).ToList();
        foreach (var supplier in suppliers)
        {
            if (supplier != suppliers[0])
            {
                _page.BreakAfter(_row - 1);
            }

            Supplier(supplier.Key, [.. supplier]);
        }

        Total();
        Shelf();
        NotPriced();
        Notes();
        _page.Print(landscape: true, headingRows: HeadRow, repeatFrom: HeadRow);
    }

    private void Supplier(string name, List<(PurchaseLine Line, PackCount Pack)> packs)
    {
        _page.Fill(_row, 2, Last, _page.Styles.Band);
        _page.Put(_row++, 1, name, _page.Styles.Band);
        var first = _row;
        foreach (var (line, pack) in packs)
        {
            Pack(line, pack);
        }

        _page.Limit(first, _row - 1, 5);
        _page.Fill(_row, 1, Last, _page.Styles.TotalText);
        _page.Put(_row, 2, $"Order from {name}", _page.Styles.TotalText);
        _page.Live(_row, 6, $"SUM(F{first}:F{_row - 1})", packs.Sum(p => Cost(p.Pack)), _page.Styles.Number(SheetStyles.Dollars, SheetStyles.Tone.Total));
        _totals.Add(_row++);
        _row++;
    }

    private void Pack(PurchaseLine line, PackCount pack)
    {
        var styles = _page.Styles;
        _page.Put(_row, 1, "☐", styles.Soft);
        _page.Put(_row, 2, line.Description, styles.Text);
        _page.Put(_row, 3, pack.Count, styles.Number(SheetStyles.Whole));
        _page.Put(_row, 4, pack.Offer.PackSize, styles.Number(SheetStyles.Whole));
        _page.Input(_row, 5, pack.Offer.Price.ToDollars(), SheetStyles.UnitDollars);
        _page.Live(_row, 6, $"ROUND(C{_row}*E{_row},2)", Cost(pack), styles.Number(SheetStyles.Dollars));
        _page.Live(_row, 7, $"C{_row}*D{_row}", pack.Count * pack.Offer.PackSize, styles.Number(SheetStyles.Whole));
        _page.Put(_row, 8, line.Unit == "foot" ? "ft" : "ea", styles.Soft);
        _page.Put(_row, 9, pack.Offer.Note, styles.Soft);
        if (_index is not null)
        {
            _page.Explained(_row, Last, _index[line.Cost!.Value.Node]);
        }

        _row++;
    }

    // The engine rounds an item's packs together. Where prices go below the cent, what that leaves stands in a row, so that the list adds up.
    private void Total()
    {
        var rounding = _plan.Total.Value - _plan.Lines.SelectMany(l => l.Packs).Sum(Cost);
        if (rounding != 0)
        {
            _page.Put(_row, 2, "Rounding, item by item", _page.Styles.Text);
            _page.Put(_row, 6, rounding, _page.Styles.Number(SheetStyles.Dollars));
            _totals.Add(_row++);
        }

        _page.Fill(_row, 1, Last, _page.Styles.TotalText);
        _page.Put(_row, 2, "Material of all suppliers", _page.Styles.TotalText);
        var sum = _totals.Count == 0 ? "0" : string.Join('+', _totals.Select(r => string.Create(CultureInfo.InvariantCulture, $"F{r}")));
        _page.Live(_row, 6, sum, _plan.Total.Value, _page.Styles.Number(SheetStyles.Dollars, SheetStyles.Tone.Total));
        _page.CallIt("Material", _row, 6);
        if (_index is not null)
        {
            _page.Explained(_row, Last, _index[_plan.Total.Node], total: true);
        }

        _row += 2;
    }

    private void Shelf()
    {
        foreach (var line in _plan.Lines.Where(l => l.FromStock > 0))
        {
            var unit = line.Unit == "foot" ? "ft" : "ea";
            _page.Across(_row++, 2, Last, string.Create(CultureInfo.InvariantCulture, $"Not bought, since it is on the shelf or ordered: {line.FromStock:0.#} {unit} of {line.Description}."), _page.Styles.Note);
        }
    }

    private void NotPriced()
    {
        foreach (var missing in _plan.NotPriced)
        {
            _page.Across(_row++, 2, Last, $"No price yet, in no total: {missing}.", _page.Styles.Warning);
        }
    }

    private void Notes()
    {
        if (SamplePrices.In(_plan))
        {
            _page.Across(_row++, 2, Last, Cautions.SamplePrices, _page.Styles.Warning);
        }

        _page.Across(_row++, 2, Last, "Breakers must be listed for the panel's make and series: check the label on its door before you order.", _page.Styles.Note);
        foreach (var caution in Cautions.Safety)
        {
            _page.Across(_row++, 2, Last, caution, _page.Styles.Note);
        }
    }

    private static decimal Cost(PackCount pack) => (pack.Offer.Price * pack.Count).RoundToCents().ToDollars();
}
