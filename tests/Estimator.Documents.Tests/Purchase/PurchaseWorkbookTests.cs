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
