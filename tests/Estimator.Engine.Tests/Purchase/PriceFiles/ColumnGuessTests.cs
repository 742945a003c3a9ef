using Estimator.Engine.Purchase.PriceFiles;

namespace Estimator.Engine.Tests.Purchase.PriceFiles;

/// <summary>What the headings of a price file are taken for.</summary>
public sealed class ColumnGuessTests
{
    [Fact]
    public void Of_WordsOfHeadings_FindsEachColumnOnce()
    {
        var guess = ColumnGuess.Of(["Part No.", "DESCRIPTION", "UPC", "Net Price", "U/M", "Pack Qty", "Price Date", "Valid Until", "Fits Make", "Series"]);
        Assert.Equal(
            [
                (PriceColumn.Number, "Part No."), (PriceColumn.Gtin, "UPC"), (PriceColumn.Description, "DESCRIPTION"), (PriceColumn.Price, "Net Price"), (PriceColumn.PricedBy, "U/M"), (PriceColumn.PackSize, "Pack Qty"),
                (PriceColumn.QuotedOn, "Price Date"), (PriceColumn.ExpiresOn, "Valid Until"), (PriceColumn.Make, "Fits Make"), (PriceColumn.Series, "Series"),
            ],
            guess.Headings.Select(h => (h.Key, h.Value)));
        Assert.Null(guess.Missing);
    }

    [Fact]
    public void Of_NoPriceOrNoItem_SaysWhatIsMissing()
    {
        Assert.Contains("price", ColumnGuess.Of(["Colour"]).Missing, StringComparison.Ordinal);
        Assert.Contains("which item", ColumnGuess.Of(["Cost"]).Missing, StringComparison.Ordinal);
    }

    [Fact]
    public void HeadingRow_BelowATitle_IsTheRowOfHeadings() =>
        Assert.Equal(2, ColumnGuess.HeadingRow([["Price list of March"], [""], ["Item", "Price", "Per"], ["1001", "4.50", "C"]]));
}
