namespace Estimator.Documents.Tests.Pricing;

/// <summary>What goes to the customer tells the price and nothing of what it is made of.</summary>
public sealed class CustomerWorkbookTests(RecalculatedBooks books)
{
    [Fact]
    public void Customer_Price_IsTheEngines()
    {
        var (row, column) = BookCells.Named(books["customer"], "Price");
        Assert.Equal(books.Expected["house"].Bid.Price.Value, books.Number("customer", "Customer", row, column));
    }

    [Fact]
    public void Customer_File_HasNoCostHourMarkupOrFormula()
    {
        using var book = BookCells.Open(books["customer"]);
        Assert.Equal(["Customer"], book.Worksheets.Select(s => s.Name));
        Assert.Equal(["Price", "PriceHigh", "PriceLow"], book.NamedRanges.Select(n => n.Name).Order(StringComparer.Ordinal));
        Assert.Empty(BookCells.Formulas(books["customer"]));
        var bid = books.Expected["house"].Bid;
        var told = books.Cells("customer").Where(c => decimal.TryParse(c, out _)).Select(BookCells.Number).ToHashSet();
        Assert.All(bid.DirectCost.Concat(bid.Additions), l => Assert.DoesNotContain(l.Amount.Value, told));
    }
}
