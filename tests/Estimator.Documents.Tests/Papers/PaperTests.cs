using Estimator.Documents.Papers;

namespace Estimator.Documents.Tests.Papers;

/// <summary>What the kit of all PDFs promises.</summary>
public sealed class PaperTests
{
    private static readonly PaperTitle Title = new("Pull list", "Garage", Letterhead.Blank with { Company = "Firm", CompanyLines = ["1 Street", "License 1"], Revision = "3", IssuedOn = new DateOnly(2026, 3, 4) });

    [Fact]
    public void Paper_OfManyRows_IsWellMadeAndRepeatsHeads()
    {
        var read = new PaperReading(Rows(120));
        read.IsWellMade();
        Assert.True(read.Pages.Count > 2);
        Assert.All(read.Pages, p => Assert.Contains("Run Length", p));
        Assert.Equal(Enumerable.Range(1, 120).Select(i => $"row {i} {i}.00"), read.AllLines.Where(l => l.StartsWith("row ", StringComparison.Ordinal)));
        Assert.Equal(("Runs", 1), Assert.Single(read.Bookmarks));
        Assert.Equal("Pull list: Garage", read.Title);
        Assert.Contains("Revision 3 · March 4, 2026", read.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Total_AtEndOfPage_StaysWithTheRowAbove()
    {
        var turns = 0;
        for (var rows = 20; rows < 60; rows++)
        {
            var read = new PaperReading(Rows(rows));
            turns += read.Pages.Count > 1 ? 1 : 0;
            var page = read.Pages.Single(p => p.Contains("Sum 1.00"));
            Assert.Contains($"row {rows} {rows}.00", page);
        }

        Assert.InRange(turns, 1, 39);
    }

    [Fact]
    public void Band_OverTwoPages_IsNamedAgain()
    {
        var read = new PaperReading(Written(table =>
        {
            table.Band("Circuit 7");
            Fill(table, 70);
        }));
        Assert.Contains("Circuit 7", read.Pages[0]);
        Assert.Contains("Circuit 7, continued", read.Pages[1]);
    }

    [Fact]
    public void Cell_OfThousandsOfWords_IsCutWithASign()
    {
        var read = new PaperReading(Written(table => table.Row(string.Join(' ', Enumerable.Range(1, 3000).Select(i => $"w{i}")), "1.00")));
        Assert.Single(read.Pages);
        Assert.Contains(read.AllLines, l => l.EndsWith('…'));
    }

    [Fact]
    public void Paragraph_OfThousandsOfWords_LosesNone()
    {
        using var paper = new Paper(Title);
        paper.Section("Long");
        paper.Say(string.Join(' ', Enumerable.Range(1, 3000).Select(i => $"w{i}")));
        var read = new PaperReading(paper.ToBytes());
        Assert.True(read.Pages.Count > 1);
        Assert.Equal(Enumerable.Range(1, 3000).Select(i => $"w{i}"), read.Text.Split(' ').Where(w => w.Length > 1 && w[0] == 'w' && char.IsDigit(w[1])));
    }

    [Theory]
    [InlineData("½ × 12 – “good”", "½ × 12 – “good”")]
    [InlineData("tab\tand\u0001", "tab and?")]
    [InlineData("\U0001F50C plug", "? plug")]
    [InlineData("=1+1 (paren) \\ back", "=1+1 (paren) \\ back")]
    public void Text_OfAUser_StaysTextThatCanBeRead(string typed, string read) =>
        Assert.Contains(read, new PaperReading(Written(table => table.Row(typed, "1.00"))).Text, StringComparison.Ordinal);

    [Fact]
    public void Paper_OfTheSameInput_HasTheSameBytes()
    {
        var first = Rows(60);
        Assert.Equal(first, Rows(60));
        var together = new byte[4][];
        Parallel.For(0, together.Length, i => together[i] = Rows(60));
        Assert.All(together, t => Assert.Equal(first, t));
        Assert.NotEqual(first, Rows(61));
    }

    [Fact]
    public void LongWord_InANarrowColumn_IsCutAndKept()
    {
        var word = new string('m', 300);
        var read = new PaperReading(Written(table => table.Row(word, "1.00")));
        Assert.Equal(300, read.Text.Count(c => c == 'm') - new PaperReading(Written(table => table.Row("x", "1.00"))).Text.Count(c => c == 'm'));
    }

    private static byte[] Rows(int count) => Written(table =>
    {
        Fill(table, count);
        table.Total("Sum", "1.00");
    });

    private static void Fill(PaperTable table, int count)
    {
        for (var i = 1; i <= count; i++)
        {
            table.Row($"row {i}", FormattableString.Invariant($"{i}.00"));
        }
    }

    private static byte[] Written(Action<PaperTable> fill)
    {
        using var paper = new Paper(Title);
        paper.Section("Runs");
        var table = new PaperTable(new PaperColumn("Run", 3), PaperColumn.Figures("Length", 1));
        fill(table);
        paper.Table(table);
        return paper.ToBytes();
    }
}
