using Estimator.Engine.Purchase;

namespace Estimator.Documents.Tests.Purchase;

/// <summary>The purchase list buys what the plan buys, and its cut plan can be followed.</summary>
public sealed class PurchaseWorkbookTests(RecalculatedBooks books)
{
    [Theory]
    [InlineData("order")]
    [InlineData("orders")]
    public void Recalculated_Total_IsThatOfThePlanAndOfItsLines(string book)
    {
        var (row, column) = BookCells.Named(books[book], "Material");
        var plan = Plan(book);
        Assert.Equal(plan.Total.Value, decimal.Round(books.Number(book, "Order", row, column), 2, MidpointRounding.AwayFromZero));
        var lines = books.Rows(book, "Order").Where(r => books.Cell(book, "Order", r, 1) == "☐").ToList();
        Assert.Equal(plan.Lines.Sum(l => l.Packs.Length), lines.Count);
        Assert.Equal(plan.Total.Value, lines.Sum(r => decimal.Round(books.Number(book, "Order", r, 6), 2, MidpointRounding.AwayFromZero)));
    }

    // Copper moves from day to day: a price typed into the list moves the pack's cost and the total by as much.
    [Fact]
    public void TypedPrice_MovesTheTotalByItsPacks()
    {
        using var open = BookCells.Open(books["order"]);
        var row = RecalculatedBooks.FirstPack(open).Address.RowNumber;
        var (total, column) = BookCells.Named(books["order"], "Material");
        var (packs, price) = (books.Number("order", "Order", row, 3), books.Number("order", "Order", row, 5));
        Assert.NotEqual(RecalculatedBooks.TypedPrice, price);
        Assert.Equal(
            decimal.Round(books.Number("order", "Order", total, column) + (packs * (RecalculatedBooks.TypedPrice - price)), 2, MidpointRounding.AwayFromZero),
            decimal.Round(books.Number("order_changed", "Order", total, column), 2, MidpointRounding.AwayFromZero));
    }

    [Theory]
    [InlineData("order")]
    [InlineData("orders")]
    public void CutSheet_EachRun_IsCutOnceAndFitsItsCoil(string book)
    {
        using var open = BookCells.Open(books[book]);
        var rows = open.Worksheet("Cut plan").RowsUsed().Where(r => r.Cell(1).GetString() == "☐").ToList();
        var pieces = Plan(book).Cuts.SelectMany(c => c.Coils).SelectMany(c => c.Pieces).ToList();
        Assert.Equal(pieces.Select(p => p.Length.ToString()), rows.Select(r => r.Cell(3).GetString()));
        Assert.All(rows, r => Assert.DoesNotContain('-', r.Cell(4).GetString()));
        Assert.All(rows, r => Assert.All((int[])[5, 6, 7, 8], c => Assert.NotEqual("", r.Cell(c).GetString())));
    }

    private static PurchasePlan Plan(string book) => Buying.Together(
        [.. (book == "order" ? [SampleEstimates.Basement] : new[] { SampleEstimates.Basement, SampleEstimates.House }).Select(e => (e.House.Job.Id, e.Takeoff))],
        TestKit.Catalogues.Shipped);
}
