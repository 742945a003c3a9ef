using System.IO.Compression;
using System.Text;
using ClosedXML.Excel;
using Estimator.Documents.Prices;
using Estimator.Engine.Purchase.PriceFiles;

namespace Estimator.Documents.Tests.Prices;

/// <summary>Price files as suppliers send them.</summary>
public sealed class PriceFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("price-files").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData(",")]
    [InlineData(";")]
    [InlineData("\t")]
    public void Rows_AnySeparator_AreTheSame(string separator)
    {
        var path = Text($"No{separator}Name{separator}Price\r\n1{separator}\"a \"\"{separator}\"\" b\"{separator} 4.50 \r\n\r\n2{separator}\"two\nlines\"{separator}5\r\n3{separator}{separator}6");
        Assert.Equal([(1, "No|Name|Price"), (2, $"1|a \"{separator}\" b|4.50"), (4, "2|two\nlines|5"), (6, "3||6")], PriceFile.Rows(path).Select(r => (r.Row, string.Join('|', r.Cells))));
    }

    [Fact]
    public void Rows_NotInUtf8_AreReadAsLatin()
    {
        var path = Path.Combine(_folder, "latin.csv");
        File.WriteAllBytes(path, Encoding.Latin1.GetBytes("No,Name,Price\n1,½ in. connector,2\n"));
        Assert.Equal("½ in. connector", PriceFile.Rows(path).Last().Cells[1]);
    }

    // A formula stays what it is: text in CSV, and in a workbook the value that stands beside it.
    [Fact]
    public void Rows_FormulaLikeText_StaysText()
    {
        Assert.Equal("=HYPERLINK(1)", PriceFile.Rows(Text("No,Price\n=HYPERLINK(1),5\n")).Last().Cells[0]);
        var path = Book(sheet =>
        {
            sheet.Cell(1, 1).Value = "No";
            sheet.Cell(2, 1).SetValue("=HYPERLINK(1)");
            sheet.Cell(2, 3).Value = 0.1 + 0.2;
            sheet.Cell(2, 4).Value = new DateTime(2026, 3, 1);
        });
        var row = PriceFile.Rows(path).Last();
        Assert.Equal((2, "=HYPERLINK(1)||0.3|46082"), (row.Row, string.Join('|', row.Cells)));
    }

    [Fact]
    public void Head_BelowATitle_FindsHeadingsAndGuesses()
    {
        var path = Book(sheet =>
        {
            sheet.Cell(1, 1).Value = "Prices of March";
            string[] heads = ["Part No", "Description", "Net Price", "UOM", "", "Price Date", "UOM"];
            for (var i = 0; i < heads.Length; i++)
            {
                sheet.Cell(4, i + 1).Value = heads[i];
            }

            sheet.Cell(5, 1).Value = "1001";
            sheet.Cell(5, 3).Value = 412.5;
            sheet.Cell(5, 4).Value = "M";
            sheet.Cell(5, 6).Value = new DateTime(2026, 3, 1);
        });
        var head = PriceFileHead.Read(path);
        Assert.Equal((4, "Part No|Description|Net Price|UOM|Column E|Price Date|UOM, column G"), (head.HeadingRow, string.Join('|', head.Headings)));
        var rows = PriceFileRows.Read(path, head, head.Start(ColumnMatching.None), TestContext.Current.CancellationToken);
        var row = Assert.Single(rows.Rows);
        Assert.Equal(("1001", 412.5m, 1000, new DateOnly(2026, 3, 1)), (row.Number, row.Price, row.PricedBy.Units, row.QuotedOn!.Value));
        var remembered = ColumnMatching.None.With(PriceColumn.Price, "Net Price").With(PriceColumn.Number, "Description");
        Assert.Equal(remembered, head.Start(remembered));
        Assert.NotEqual(remembered.With(PriceColumn.Gtin, "Gone"), head.Start(remembered.With(PriceColumn.Gtin, "Gone")));
    }

    [Fact]
    public void Read_WrongRows_AreCountedAndTheOthersKept()
    {
        var path = Text("No,Price\n1,5\n2,cheap\n3,7\n,9\n");
        var head = PriceFileHead.Read(path);
        var rows = PriceFileRows.Read(path, head, head.Start(ColumnMatching.None), TestContext.Current.CancellationToken);
        Assert.Equal(("1 3", "3 Price, 5 No", 2), (string.Join(' ', rows.Rows.Select(r => r.Number)), string.Join(", ", rows.Problems.Select(p => $"{p.Row} {p.Field}")), rows.WrongRows));
    }

    [Fact]
    public void Rows_FileBeyondTheLimits_SaysWhichAndWhatIsAccepted()
    {
        Refused("100,000 rows", Text("No,Price\n" + string.Concat(Enumerable.Repeat("1,2\n", PriceFileLimits.Rows))));
        Refused("200 are accepted", Text(string.Join(',', Enumerable.Repeat("a", 201))));
        Refused("10,000 characters", Text("No,Price\n\"" + new string('a', 20_000) + "\",5\n"));
        Refused("10,000 characters", Text("No,Price\n\"never closed,5\n" + string.Concat(Enumerable.Repeat("1,2\n", 5_000))));
        Refused("no row below", Text("No,Price\n"));
        Refused("no row below", Text(""));
    }

    [Fact]
    public void Rows_BrokenWorkbook_IsRefusedInWords()
    {
        var good = File.ReadAllBytes(Book(sheet => sheet.Cell(1, 1).Value = "No"));
        var cut = Path.Combine(_folder, "cut.xlsx");
        File.WriteAllBytes(cut, good[..(good.Length / 2)]);
        Refused("can't be read as one", cut);
        var other = Path.Combine(_folder, "other.xlsx");
        using (var zip = ZipFile.Open(other, ZipArchiveMode.Create))
        {
            zip.CreateEntry("readme.txt");
        }

        Refused("", other);
    }

    private static void Refused(string words, string path) => Assert.Contains(words, Assert.Throws<InvalidDataException>(() => PriceFileHead.Read(path) is var head && PriceFile.Rows(path).Last().Cells.Length > head.HeadingRow).Message, StringComparison.Ordinal);

    private string Text(string text)
    {
        var path = Path.Combine(_folder, $"{Guid.NewGuid():N}.csv");
        File.WriteAllText(path, text);
        return path;
    }

    private string Book(Action<IXLWorksheet> fill)
    {
        var path = Path.Combine(_folder, $"{Guid.NewGuid():N}.xlsx");
        using var book = new XLWorkbook();
        fill(book.AddWorksheet("Prices"));
        book.SaveAs(path);
        return path;
    }
}
