using System.Text.RegularExpressions;
using ClosedXML.Excel;

namespace Estimator.Documents.Tests.Sums;

/// <summary>The workbooks of random bids, houses and orders, recalculated by another program: what the cells of a column show adds up to what the cell that sums them shows.</summary>
public sealed partial class BookSumsTests(RecalculatedBooks books)
{
    [Fact]
    [AddsUp("BidWorkbook")]
    public void Bid_OfRandomBids_AddsUp() => AddsUp("random_");

    [Fact]
    [AddsUp("CrewWorkbook")]
    public void Crew_OfRandomHouses_AddsUp() => AddsUp("crew_random_");

    [Fact]
    [AddsUp("PermitWorkbook")]
    public void Permit_OfRandomHouses_AddsUp() => AddsUp("permit_random_");

    [Fact]
    [AddsUp("PermitWorkbook")]
    public void Permit_OfRandomHouses_SpacesAddUpToTheLegs()
    {
        foreach (var book in books.Names.Where(n => n.StartsWith("permit_random_", StringComparison.Ordinal)))
        {
            var rows = books.Rows(book, "Panels").Select(r => (First: books.Cell(book, "Panels", r, 1), Leg: books.Cell(book, "Panels", r, 3), Load: books.Cell(book, "Panels", r, 6))).ToList();
            var legs = new Dictionary<string, decimal> { ["A"] = 0, ["B"] = 0 };
            foreach (var row in rows.Where(r => r.Load.Length > 0 && r.First != "Panel"))
            {
                if (row.Leg.Length > 0)
                {
                    legs[row.Leg] += BookCells.Number(row.Load);
                }
                else if (row.First.StartsWith("Leg ", StringComparison.Ordinal))
                {
                    Assert.Equal(BookCells.Number(row.Load), legs[row.First[^1..]]);
                    legs[row.First[^1..]] = 0;
                }
            }
        }
    }

    [Fact]
    [AddsUp("BudgetWorkbook")]
    public void Budget_OfRandomHouses_AddsUp() => AddsUp("budget_random_");

    [Fact]
    [AddsUp("PurchaseWorkbook")]
    public void Purchase_OfRandomHouses_AddsUp() => AddsUp("buy_random_");

    [Fact]
    [AddsUp("PurchaseOrderWorkbook")]
    public void Order_OfRandomOrders_AddsUp() => AddsUp("po_random_");

    private void AddsUp(string books)
    {
        var proven = Names(books).Sum(Proven);
        Assert.True(proven >= Names(books).Count(), $"{proven} sums are too few");
    }

    private IEnumerable<string> Names(string start) => books.Names.Where(n => n.StartsWith(start, StringComparison.Ordinal));

    private int Proven(string book)
    {
        using var open = BookCells.Open(books[book]);
        var sums = BookCells.Formulas(books[book]).Select(f => (Formula: f, Of: ColumnSum().Match(f.Formula))).Where(f => f.Of.Success).ToList();
        foreach (var ((sheet, row, column, _, _), of) in sums)
        {
            var (from, to, digits) = (int.Parse(of.Groups["from"].Value, null), int.Parse(of.Groups["to"].Value, null), Digits(open.Worksheet(sheet).Cell(row, column)));
            var summed = XLHelper.GetColumnNumberFromLetter(of.Groups["column"].Value);
            var lines = Enumerable.Range(from, to - from + 1).Select(r => books.Cell(book, sheet, r, summed)).Where(c => c.Length > 0 && char.IsDigit(c[^1])).Select(c => decimal.Round(BookCells.Number(c), digits, MidpointRounding.AwayFromZero)).ToList();
            // Dollars and counts to the last digit; feet that end in a sixteenth of an inch are shown rounded, line by line.
            var near = digits > 2 ? (lines.Count + 1) * 0.00005m : 0;
            Assert.InRange(decimal.Round(books.Number(book, sheet, row, column), digits, MidpointRounding.AwayFromZero) - lines.Sum(), -near, near);
        }

        return sums.Count;
    }

    private static int Digits(IXLCell cell) => cell.Style.NumberFormat.Format.Split('.') is [_, var after] ? after.TakeWhile(c => c is '0' or '#').Count() : 0;

    [GeneratedRegex(@"^SUM\((?<column>[A-Z]+)(?<from>\d+):\k<column>(?<to>\d+)\)$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex ColumnSum();
}
