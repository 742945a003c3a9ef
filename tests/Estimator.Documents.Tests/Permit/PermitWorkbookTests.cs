using Estimator.Documents.Loads;
using Estimator.Documents.Permit;

namespace Estimator.Documents.Tests.Permit;

/// <summary>The load calculation as a sheet says what the engine says, before and after a nameplate is changed in it.</summary>
public sealed class PermitWorkbookTests(RecalculatedBooks books)
{
    private const decimal Near = 0.0001m;

    [Theory]
    [InlineData("permit_basement")]
    [InlineData("permit_house")]
    [InlineData("permit_service")]
    [InlineData("permit_house_changed")]
    public void Recalculated_EveryLine_EqualsTheEngine(string book)
    {
        var estimate = books.Expected[book];
        var lines = estimate.Loads.Sheets.Concat(estimate.Loads.Feeders.Select(f => f.Sheet)).SelectMany(LoadWords.Shown).ToList();
        var rows = new Queue<int>(books.Rows(book, "Loads"));
        foreach (var line in lines)
        {
            var row = rows.Dequeue();
            while (books.Cell(book, "Loads", row, 1) != line.Label || books.Cell(book, "Loads", row, 5).Length == 0 || books.Cell(book, "Loads", row, 4).Length == 0)
            {
                row = rows.Dequeue();
            }

            Assert.InRange(books.Number(book, "Loads", row, 3) - line.Value.Value, -Near, Near);
        }

        Assert.NotEmpty(lines);
    }

    [Fact]
    public void ChangedNameplates_MoveTheLoad() =>
        Assert.NotEqual(books.Expected["permit_house"].Loads.Sheets[0].TotalVa.Value, books.Expected["permit_house_changed"].Loads.Sheets[0].TotalVa.Value);

    [Theory]
    [InlineData("permit_basement")]
    [InlineData("permit_house")]
    [InlineData("permit_service")]
    public void Recalculated_Legs_AreTheSumsOfTheirSpaces(string book)
    {
        var legs = books.Rows(book, "Panels").Where(r => books.Cell(book, "Panels", r, 1).StartsWith("Leg ", StringComparison.Ordinal)).Select(r => books.Number(book, "Panels", r, 6)).ToList();
        Assert.Equal(books.Expected[book].Schedules.Panels.SelectMany(s => (decimal[])[s.LegAVa.Value, s.LegBVa.Value]), legs);
    }

    [Theory]
    [InlineData("permit_house")]
    [InlineData("crew_house")]
    public void Headings_OfALongSheet_AreRepeatedInTheFormThatProgramsRead(string book)
    {
        using var package = new System.IO.Compression.ZipArchive(new MemoryStream(books[book]));
        using var reader = new StreamReader(package.GetEntry("xl/workbook.xml")!.Open());
        Assert.Matches(@"_xlnm\.Print_Titles[^>]*>[^<]*!\$4:\$4<", reader.ReadToEnd());
    }

    [Fact]
    public void Write_TheSameEstimateTwice_GivesTheSameBytes() => Assert.Equal(books["permit_basement"], PermitWorkbook.Write(SampleEstimates.Basement, Letterhead.Blank));
}
