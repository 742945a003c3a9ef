using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;
using Estimator.Documents.Pricing;
using Estimator.Engine;
using Estimator.Engine.Pricing.Ranges;

namespace Estimator.Documents.Tests.Pricing;

/// <summary>The bid workbook says what the engine says, before and after a reader changes its rates.</summary>
public sealed class BidWorkbookTests(RecalculatedBooks books)
{
    public static TheoryData<string> Bids =>
        ["basement", "house", "service", "basement_changed", "house_changed", .. RecalculatedBooks.Seeds.Select(s => $"random_{s}")];

    public static TheoryData<string> Unchanged => ["basement", "house", "service", .. RecalculatedBooks.Seeds.Select(s => $"random_{s}")];

    [Theory]
    [MemberData(nameof(Bids))]
    public void Recalculated_PriceAndRange_EqualTheEngineToTheCent(string book)
    {
        var bid = books.Expected[book].Bid;
        Assert.Equal(bid.Price.Value, Named(book, "Cost", "Price"));
        Assert.Equal((Low(book), High(book)), (Named(book, "Cost", "PriceLow"), Named(book, "Cost", "PriceHigh")));
        Assert.Equal(bid.HourCost.Value, Named(book, "Cost", "LaborRate"));
        Assert.Equal(books.Expected[book].Purchase.Total.Value, Named(book, "Takeoff", "Material"));
        Assert.Equal(books.Expected[book].Labor.Total.Value, Named(book, "Labor", "LaborHours"));
    }

    // A sheet does not draw again: its ends stay as far from the changed price as the draws of the estimate were.
    private decimal Low(string book) => End(book, r => -r.BelowPercent.Value);

    private decimal High(string book) => End(book, r => r.AbovePercent.Value);

    private decimal End(string book, Func<PriceRange, decimal> percent)
    {
        var (price, step) = (books.Expected[book].Bid.Price.Value, Named(book, "Cost", "RoundPriceTo"));
        var end = price + (price * percent(books.Expected[book.Replace("_changed", "", StringComparison.Ordinal)].Bid.Range) / 100);
        return step == 0 ? decimal.Round(end, 2, MidpointRounding.AwayFromZero) : decimal.Ceiling(end / step) * step;
    }

    [Theory]
    [MemberData(nameof(Bids))]
    public void Recalculated_BidLines_EqualTheEngineToTheCent(string book)
    {
        var expected = books.Expected[book].Bid;
        foreach (var line in expected.DirectCost.Concat(expected.Additions))
        {
            var row = books.Rows(book, "Cost").Last(r => books.Cell(book, "Cost", r, 1) == line.Label && books.Cell(book, "Cost", r, 2).Length > 0);
            Assert.Equal(line.Amount.Value, Cents(books.Number(book, "Cost", row, 2)));
        }
    }

    [Theory]
    [MemberData(nameof(Unchanged))]
    public void Recalculated_EveryFormula_EqualsTheFigureShownBeside(string book)
    {
        var formulas = BookCells.Formulas(books[book]).ToList();
        Assert.True(formulas.Count > 60, $"{formulas.Count} formulas are too few");
        Assert.All(formulas, f => Assert.InRange(books.Number(book, f.Sheet, f.Row, f.Column) - BookCells.Number(f.Shown), -0.000001m, 0.000001m));
    }

    [Theory]
    [InlineData("Takeoff", "Meter base, 125 A")]
    [InlineData("Takeoff", "Tandem breaker, two 15 A circuits in one space")]
    [InlineData("Takeoff", "Circuit moved to another panel: named, extended within 6 ft, spliced")]
    [InlineData("Takeoff", "Temporary power: pedestal with protected receptacles, set and taken away")]
    [InlineData("Labor", "Service mast: conduit, weatherhead, roof flashing, straps")]
    [InlineData("Labor", "Waiting for the utility takes 12 days on the calendar; no hours are charged for them.")]
    [InlineData("Takeoff", "NM-B cable 4/3 with ground")]
    public void ServiceWork_StandsInTheSheets(string sheet, string words)
    {
        using var book = BookCells.Open(books["service"]);
        var sheets = book.Worksheets.Select(s => s.Name).ToList();
        Assert.True(sheets.Contains(sheet), string.Join(", ", sheets));
        Assert.Contains(book.Worksheet(sheet).CellsUsed(), c => c.GetString() == words);
    }

    [Theory]
    [InlineData("basement")]
    [InlineData("house")]
    public void ChangedRates_MoveThePrice(string book) =>
        Assert.NotEqual(books.Expected[book].Bid.Price.Value, Named($"{book}_changed", "Cost", "Price"));

    [Fact]
    public void Recalculated_AnyBook_HasNoErrorCell() =>
        Assert.All(books.Names, book => Assert.DoesNotContain(books.Cells(book), c => c.StartsWith('#') || c.StartsWith("Err:", StringComparison.Ordinal)));

    [Theory]
    [MemberData(nameof(Bids))]
    public void PrintedLines_AddUpToThePrintedTotals(string book)
    {
        var (totalRow, _) = BookCells.Named(books[book], "Material");
        Assert.Equal(books.Number(book, "Takeoff", totalRow, 11), Sum(book, "Takeoff", 5, totalRow - 1, 11));
        var (hoursRow, _) = BookCells.Named(books[book], "LaborHours");
        var lines = books.Expected[book].Labor.Lines.Length;
        Assert.Equal(books.Number(book, "Labor", hoursRow, 7), Sum(book, "Labor", 5, 4 + lines, 7));
        var (price, _) = BookCells.Named(books[book], "Price");
        int Row(string label) => books.Rows(book, "Cost").Last(r => books.Cell(book, "Cost", r, 1) == label);
        Assert.Equal(books.Number(book, "Cost", Row("Direct cost"), 2), Sum(book, "Cost", Row("Material, as bought in whole packs and coils"), Row("Direct cost") - 1, 2));
        Assert.Equal(books.Number(book, "Cost", Row("Cost"), 2), Sum(book, "Cost", Row("Direct cost"), Row("Cost") - 1, 2));
        if (books.Expected[book].Bid.Additions.Any(l => l.Id == "sales-tax"))
        {
            var before = Row("Price before sales tax");
            Assert.Equal(books.Number(book, "Cost", before, 2), Sum(book, "Cost", Row("Cost"), before - 1, 2));
            Assert.Equal(books.Number(book, "Cost", price, 2), Sum(book, "Cost", before, price - 1, 2));
        }
        else
        {
            Assert.Equal(books.Number(book, "Cost", price, 2), Sum(book, "Cost", Row("Cost"), price - 1, 2));
        }
    }

    [Fact]
    public void Package_EveryBook_IsValid()
    {
        foreach (var name in books.Names.Where(n => !n.EndsWith("_changed", StringComparison.Ordinal)))
        {
            using var document = SpreadsheetDocument.Open(new MemoryStream(books[name]), isEditable: false);
            var errors = new OpenXmlValidator(FileFormatVersions.Office2013).Validate(document, TestContext.Current.CancellationToken).Select(e => $"{name} {e.Part?.Uri} {e.Path?.XPath}: {e.Description}");
            Assert.Empty(errors);
        }
    }

    [Fact]
    public void Write_TheSameEstimateTwice_GivesTheSameBytes() =>
        Assert.Equal(books["basement"], BidWorkbook.Write(JobEstimate.Compute(SampleEstimates.Job("basement-finish"), TestKit.Catalogues.Shipped), Letterhead.Blank));

    [Fact]
    public void Links_EachFigure_LeadToTheRowOfItsExplanation()
    {
        using var book = BookCells.Open(books["basement"]);
        var explanations = book.Worksheet("Explanations");
        var links = book.Worksheets.SelectMany(s => s.Hyperlinks.Select(h => (Sheet: s, h.Cell, h.InternalAddress))).ToList();
        Assert.True(links.Count > 100, $"{links.Count} links are too few");
        Assert.All(links, link =>
        {
            var target = explanations.Cell(link.InternalAddress.Split('!')[1]);
            Assert.Equal(link.Cell.GetDouble(), target.GetDouble());
            Assert.NotEqual("", target.CellRight().GetString());
        });
        var quantity = book.Worksheet("Takeoff").Column(1).CellsUsed().Single(c => c.GetString() == "Cable staple").WorksheetRow();
        Assert.Equal(quantity.Cell(3).GetDouble(), explanations.Cell((int)quantity.Cell(14).GetDouble(), 3).GetDouble());
    }

    [Fact]
    public void Explanations_EachRow_NamesInputsOrASource()
    {
        using var book = BookCells.Open(books["basement"]);
        var rows = book.Worksheet("Explanations").RowsUsed().Skip(3).ToList();
        Assert.True(rows.Count > 500, $"{rows.Count} rows are too few");
        Assert.All(rows, r => Assert.True(
            r.Cell(5).GetString() is "counted" || r.Cell(5).GetString().Contains("row", StringComparison.Ordinal) || r.Cell(7).GetString().Length > 0 || r.Cell(5).GetString() is "nothing to add: zero",
            $"row {r.RowNumber()} says neither inputs nor source"));
    }

    private decimal Named(string book, string sheet, string name)
    {
        var (row, column) = BookCells.Named(books[book], name);
        return Cents(books.Number(book, sheet, row, column));
    }

    private decimal Sum(string book, string sheet, int first, int last, int column) =>
        Cents(Enumerable.Range(first, last - first + 1).Select(r => books.Cell(book, sheet, r, column)).Where(c => c.Length > 0 && c != "no price").Sum(c => Cents(BookCells.Number(c))));

    private static decimal Cents(decimal value)
    {
        var cents = decimal.Round(value, 2, MidpointRounding.AwayFromZero);
        Assert.InRange(value - cents, -0.000001m, 0.000001m);
        return cents;
    }
}
