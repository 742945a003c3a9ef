using Estimator.Documents.Pricing;
using Estimator.Documents.Purchase;
using Estimator.Engine;

namespace Estimator.Documents.Tests.Pricing;

/// <summary>What nobody offers is listed as such and never costs zero; samples are called samples.</summary>
public sealed class UnpricedTests
{
    private const string Item = "Smoke alarm, wired and interconnected";

    private static readonly JobEstimate Unpriced = JobEstimate.Compute(SampleEstimates.Job("basement-finish"), SampleEstimates.Catalogue((name, text) =>
        name != "offers.csv" ? text : string.Join('\n', text.Split('\n').Where(l => !l.StartsWith("smoke-alarm,", StringComparison.Ordinal)))));

    private static readonly JobEstimate OwnPrices = JobEstimate.Compute(SampleEstimates.Job("basement-finish"), SampleEstimates.Catalogue((name, text) =>
        name != "offers.csv" ? text : text.Replace("invented sample price", "list of March", StringComparison.Ordinal)));

    [Fact]
    public void Bid_ItemThatNobodyOffers_SaysNoPriceOnEachSheet()
    {
        var bytes = BidWorkbook.Write(Unpriced, Letterhead.Blank);
        using var book = BookCells.Open(bytes);
        var row = book.Worksheet("Takeoff").Column(1).CellsUsed().Single(c => c.GetString() == Item).Address.RowNumber;
        Assert.Equal("no price", BookCells.Formulas(bytes).Single(f => f.Sheet == "Takeoff" && f.Row == row && f.Column == 11).Shown);
        Assert.Contains(book.Worksheet("Cost").CellsUsed(), c => c.GetString() == Item);
        Assert.Contains(book.Worksheet("Customer").CellsUsed(), c => c.GetString() == $"No price yet, so not in this bid: {Item}.");
    }

    [Fact]
    public void Purchase_ItemThatNobodyOffers_IsNamedUnderTheTotal()
    {
        using var book = BookCells.Open(PurchaseWorkbook.Write(Unpriced.Purchase, [Unpriced], Letterhead.Blank));
        Assert.Contains(book.Worksheet("Order").CellsUsed(), c => c.GetString() == $"No price yet, in no total: {Item}.");
    }

    [Fact]
    public void Bid_SamplePrices_AreCalledSoAndOwnPricesAreNot()
    {
        Assert.True(Says(SampleEstimates.Basement, "Customer"));
        Assert.True(Says(SampleEstimates.Basement, "Cost"));
        Assert.False(Says(OwnPrices, "Customer"));
        Assert.False(Says(OwnPrices, "Cost"));

        static bool Says(JobEstimate estimate, string sheet)
        {
            using var book = BookCells.Open(BidWorkbook.Write(estimate, Letterhead.Blank));
            return book.Worksheet(sheet).CellsUsed().Any(c => c.GetString() == Cautions.SamplePrices);
        }
    }

    [Fact]
    public void Documents_Each_CarryTheCautions()
    {
        using var bid = BookCells.Open(BidWorkbook.Write(OwnPrices, Letterhead.Blank));
        using var order = BookCells.Open(PurchaseWorkbook.Write(OwnPrices.Purchase, [OwnPrices], Letterhead.Blank));
        Assert.All(new[] { bid.Worksheet("Customer"), bid.Worksheet("Cost"), order.Worksheet("Order") }, sheet =>
            Assert.All(Cautions.Safety, caution => Assert.Contains(sheet.CellsUsed(), c => c.GetString() == caution)));
    }
}
