namespace Estimator.Documents.Tests.Budget;

/// <summary>The owner's budget says what the engine says, and follows a price that he changes.</summary>
public sealed class BudgetWorkbookTests(RecalculatedBooks books)
{
    [Theory]
    [InlineData("budget", "basement")]
    [InlineData("budget_changed", "basement_changed")]
    public void Recalculated_Material_EqualsTheEngineToTheCent(string book, string bid) =>
        Assert.Equal(books.Expected[bid].Purchase.Total.Value, Beside(book, "Material as bought"));

    [Fact]
    public void Budget_RangeAndHours_AreTheEngines()
    {
        var expected = books.Expected["basement"];
        Assert.Equal(
            [expected.Bid.Price.Value, expected.Bid.Low.Value, expected.Bid.High.Value, expected.Labor.Total.Value],
            new[] { "Likely", "Low end", "High end", "Work" }.Select(l => Beside("budget", l)));
    }

    [Fact]
    public void Budget_OfSamplePrices_SaysThatTheyAreInvented() =>
        Assert.Contains(Cautions.SamplePrices, books.Rows("budget", "Budget").Select(r => books.Cell("budget", "Budget", r, 2)));

    private decimal Beside(string book, string label) => books.Number(book, "Budget", books.Rows(book, "Budget").First(r => books.Cell(book, "Budget", r, 1) == label), 2);
}
