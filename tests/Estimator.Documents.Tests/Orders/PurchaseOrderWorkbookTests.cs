using System.Globalization;
using CsvHelper;
using Estimator.Documents.Orders;

namespace Estimator.Documents.Tests.Orders;

/// <summary>A purchase order as workbook and CSV, read again and recalculated.</summary>
public sealed class PurchaseOrderWorkbookTests(RecalculatedBooks books)
{
    // By hand: 303.77 + 64.00 + 35.00; the second as beside its order.
    [Theory]
    [InlineData("po_placed", 402.77)]
    [InlineData("po_happened", 369.67)]
    public void Recalculated_Total_IsThatOfTheOrderAndOfItsRows(string book, double total)
    {
        var (row, column) = BookCells.Named(books[book], "OrderTotal");
        Assert.Equal((decimal)total, books.Number(book, "Order", row, column));
        Assert.Equal((decimal)total, (book == "po_placed" ? SampleOrders.Placed : SampleOrders.Happened).Order.Total.ToDollars());
        Assert.All(BookCells.Formulas(books[book]), f => Assert.Equal(BookCells.Number(f.Shown), decimal.Round(books.Number(book, f.Sheet, f.Row, f.Column), 2, MidpointRounding.AwayFromZero)));
    }

    // A changed number of packs changes the total: one coil less is 101.26 less, for two are 202.52 (202.515 rounded).
    [Fact]
    public void Recalculated_ChangedPacks_ChangeTheTotal()
    {
        var (row, column) = BookCells.Named(books["po_changed"], "OrderTotal");
        Assert.Equal(402.77m - 303.77m + 202.52m, decimal.Round(books.Number("po_changed", "Order", row, column), 2, MidpointRounding.AwayFromZero));
    }

    [Fact]
    public void Write_FormulaLikeTexts_StayTexts()
    {
        using var open = BookCells.Open(PurchaseOrderWorkbook.Write(SampleOrders.Hostile("=1+1"), Letterhead.Blank));
        Assert.Contains(open.Worksheet(1).CellsUsed(), c => c.GetString() == "=1+1" && !c.HasFormula);
        Assert.DoesNotContain(open.Worksheet(1).CellsUsed(), c => c.HasFormula && c.FormulaA1.Contains("1+1", StringComparison.Ordinal));
    }

    [Fact]
    public void Csv_Rows_AddUpToTheGoods()
    {
        var text = PurchaseOrderTable.Write(SampleOrders.Happened);
        using var csv = new CsvReader(new StringReader(text), CultureInfo.InvariantCulture);
        var rows = csv.GetRecords<dynamic>().Cast<IDictionary<string, object>>().ToList();
        Assert.Equal(303.77m + 38.40m, rows.Sum(r => decimal.Parse((string)r["cost_usd"], CultureInfo.InvariantCulture)));
        Assert.Equal(["77-12", "'=1002"], rows.Select(r => (string)r["supplier_number"]));
    }
}
