using Estimator.Engine.Measures;
using Estimator.Engine.Purchase.PriceFiles;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Purchase.PriceFiles;

/// <summary>What a price file would do, before anything is written.</summary>
public sealed class PricePreviewTests
{
    private const string Cable = "nm_b-12-2";
    private const string Breaker = "breaker-1-20-plain";
    private static readonly string[] Headings = ["Id", "No", "GTIN", "Name", "Price", "Per", "Pack", "Date", "Until"];
    private static readonly ColumnMatching Matching = ColumnMatching.None
        .With(PriceColumn.Item, "Id").With(PriceColumn.Number, "No").With(PriceColumn.Gtin, "GTIN").With(PriceColumn.Description, "Name").With(PriceColumn.Price, "Price")
        .With(PriceColumn.PricedBy, "Per").With(PriceColumn.PackSize, "Pack").With(PriceColumn.QuotedOn, "Date").With(PriceColumn.ExpiresOn, "Until");

    // Expected dollars by hand: 412.50 by the thousand feet is 0.4125 a foot, and a coil of 250 ft 103.125.
    [Theory]
    [InlineData(Cable, "412.50", "M", "250", 250, 103.125)]
    [InlineData(Cable, "41.25", "C", "250", 250, 103.125)]
    [InlineData(Cable, "0.4125", "FT", "250", 250, 103.125)]
    [InlineData(Cable, "99", "coil of 250 ft", "", 250, 99)]
    [InlineData(Cable, "$1,099.00", "", "1", 1, 1099)]
    [InlineData(Breaker, "640", "C", "", 1, 6.4)]
    [InlineData(Breaker, "55", "box of 10", "", 10, 55)]
    [InlineData(Breaker, "5.5", "EA", "10", 10, 55)]
    [InlineData(Breaker, "1", "M", "", 1, 0.001)]
    public void Of_PriceByAnyUnit_IsThePriceOfThePack(string item, string price, string per, string pack, int size, double dollars)
    {
        var change = Assert.Single(Preview(Row(item, price: price, per: per, pack: pack)).Changes);
        Assert.Equal((PackChangeKind.New, size, (decimal)dollars), (change.Kind, change.PackSize, change.New!.Value.ToDollars()));
    }

    // A coil of 250 ft at 103.125, or 250 ft at 0.4125 each.
    [Theory]
    [InlineData(ColumnMatching.ByThePack, "103.125", "250")]
    [InlineData(ColumnMatching.ByThePiece, "0.4125", "250")]
    public void Of_PacksWithoutAColumnOfUnits_AreReadAsThePersonSays(string said, string price, string pack)
    {
        var reading = new PriceRowReading(["Id", "Price", "Pack"], Bare.With(PriceColumn.PricedBy, said), dayZero: null);
        var row = reading.Read(2, [Cable, price, pack]).Row!;
        var change = Assert.Single(PricePreview.Of([row], ItemLinks.None, [], Catalogues.Shipped).Changes);
        Assert.Equal((250, 103.125m), (change.PackSize, change.New!.Value.ToDollars()));
    }

    [Fact]
    public void Missing_PacksAndNothingThatSaysWhatAPriceIsFor_IsAsked()
    {
        Assert.Contains("what a price is for", Bare.Missing!, StringComparison.Ordinal);
        Assert.Null(Bare.With(PriceColumn.PricedBy, ColumnMatching.ByThePack).Missing);
    }

    private static ColumnMatching Bare { get; } = ColumnMatching.None.With(PriceColumn.Item, "Id").With(PriceColumn.Price, "Price").With(PriceColumn.PackSize, "Pack");

    [Fact]
    public void Of_PricesOfBefore_TellsWhatRisesAndWhatIsGone()
    {
        KnownPrice[] before = [new(Cable, 250, Money.FromDollars(100)), new(Breaker, 1, Money.FromDollars(6)), new(Breaker, 10, Money.FromDollars(50))];
        var preview = PricePreview.Of(Rows(Row(Cable, price: "112.5", per: "coil of 250 ft"), Row(Breaker, price: "6")), ItemLinks.None, before, Catalogues.Shipped);
        Assert.Equal(
            [(Breaker, 1, PackChangeKind.Unchanged), (Breaker, 10, PackChangeKind.Gone), (Cable, 250, PackChangeKind.Changed)],
            preview.Changes.Select(c => (c.Item, c.PackSize, c.Kind)));
        Assert.Equal(12.5m, preview.Changes[2].RisePercent);
    }

    [Fact]
    public void Of_NumberOrGtinRemembered_FindsTheItem()
    {
        var links = ItemLinks.None.With(Rows(Row("", number: "77", gtin: "6291041500213")).Single(), Breaker);
        Assert.Equal([Breaker, Breaker], new[] { Row("", number: "77"), Row("", gtin: "6291041500213") }.Select(r => Assert.Single(Preview(r, links).Changes).Item));
        Assert.Equal("78", Assert.Single(Preview(Row("", number: "78"), links).Unmatched).Number);
    }

    [Fact]
    public void Of_RowsThatContradict_AreRefusedWithTheirRow()
    {
        var links = ItemLinks.None.With(Rows(Row("", number: "77")).Single(), Breaker).With(Rows(Row("", gtin: "6291041500213")).Single(), Cable);
        Assert.Equal(2, Assert.Single(Preview(Row("", number: "77", gtin: "6291041500213"), links).Problems).Row);
        Assert.Contains("Found 'no-such-item'", Assert.Single(Preview(Row("no-such-item")).Problems).Text, StringComparison.Ordinal);
        Assert.Contains("How many feet", Assert.Single(Preview(Row(Cable, per: "M")).Problems).Text, StringComparison.Ordinal);
        var twice = PricePreview.Of(Rows(Row(Breaker), Row(Breaker, price: "9")), ItemLinks.None, [], Catalogues.Shipped);
        Assert.Equal((3, 5m), (Assert.Single(twice.Problems).Row, Assert.Single(twice.Changes).New!.Value.ToDollars()));
    }

    [Theory]
    [InlineData("Price", "cheap", "cheap")]
    [InlineData("Price", "", "no price")]
    [InlineData("Price", "0", "above 0")]
    [InlineData("Price", "-4", "above 0")]
    [InlineData("Price", "=4+4", "'=4+4'")]
    [InlineData("Per", "armful", "armful")]
    [InlineData("Pack", "2.5", "whole number")]
    [InlineData("GTIN", "6291041500214", "would have to be 3")]
    [InlineData("Date", "soon", "3/31/2026")]
    [InlineData("Date", "46000", "3/31/2026")]
    [InlineData("No", "", "Found no item")]
    public void Read_FieldThatIsWrong_IsNamedWithRowAndFinding(string field, string text, string found)
    {
        string[] cells = ["", "77", "", "", "5", "", "", "", ""];
        cells[Array.IndexOf(Headings, field)] = text;
        var (row, problems) = new PriceRowReading(Headings, Matching, null).Read(41, cells);
        Assert.Null(row);
        var problem = Assert.Single(problems);
        Assert.Equal((41, field == "No" ? "Id" : field), (problem.Row, problem.Field));
        Assert.Contains(found, problem.Text, StringComparison.Ordinal);
    }

    // Day 46082 of a workbook is March 1, 2026: 126 years of 365 days from 1900, with 31 leap days and the one that 1900 did not have, then 31 + 28 + 1.
    [Theory]
    [InlineData("2026-03-01", false)]
    [InlineData("3/1/2026", false)]
    [InlineData("46082", true)]
    public void Read_Days_InTheFormsOfFilesAndWorkbooks(string text, bool workbook)
    {
        var (row, _) = new PriceRowReading(Headings, Matching, workbook ? new DateOnly(1899, 12, 30) : null).Read(2, ["", "77", "", "", "5", "", "", text, ""]);
        Assert.Equal(new DateOnly(2026, 3, 1), row!.QuotedOn);
    }

    private static string[] Row(string item, string number = "", string gtin = "", string price = "5", string per = "", string pack = "") => [item, number, gtin, "", price, per, pack, "", ""];

    private static PricePreview Preview(string[] row, ItemLinks? links = null) => PricePreview.Of(Rows(row), links ?? ItemLinks.None, [], Catalogues.Shipped);

    private static IEnumerable<PriceRow> Rows(params string[][] rows)
    {
        var reading = new PriceRowReading(Headings, Matching, null);
        return rows.Select((cells, i) => reading.Read(i + 2, cells)).Select(r => r.Row ?? throw new InvalidOperationException(r.Problems[0].Text));
    }
}
