namespace Estimator.Documents.Tests.Workbooks;

/// <summary>What a user types stays text, in every cell, also after another program has read it.</summary>
/// <remarks>Source of the starts: OWASP, CSV Injection.</remarks>
public sealed class UserTextTests(RecalculatedBooks books)
{
    public static TheoryData<string, string> Texts
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var name in HostileTexts.All.Keys)
            {
                data.Add("bid", name);
                data.Add("buy", name);
                data.Add("customer", name);
                data.Add("budget", name);
            }

            return data;
        }
    }

    // The library takes an escaped underscore for two escapes on reading; the recalculated books show that the file is right.
    public static TheoryData<string, string> TextsThatTheLibraryReads => [.. Texts.Where(t => t.Data.Item2 != "escape")];

    [Theory]
    [MemberData(nameof(TextsThatTheLibraryReads))]
    public void Write_HostileText_IsReadBackAsTheSameText(string kind, string name)
    {
        using var book = BookCells.Open(books[$"{kind}_{name}"]);
        var holding = book.Worksheets.SelectMany(s => s.CellsUsed()).Where(c => c.GetString().Contains(HostileTexts.All[name], StringComparison.Ordinal) && !IsFigure(c, HostileTexts.All[name])).ToList();
        Assert.True(holding.Count >= (kind == "bid" ? 8 : 3), $"{holding.Count} cells hold the text");
        Assert.All(holding, c => Assert.False(c.HasFormula, c.Address.ToString()));
        Assert.All(holding, c => Assert.Equal(ClosedXML.Excel.XLDataType.Text, c.DataType));
    }

    // A figure of the engine may hold the digits of a text, as 1.007 holds 007.
    private static bool IsFigure(ClosedXML.Excel.IXLCell cell, string text) => cell.DataType is ClosedXML.Excel.XLDataType.Number && cell.GetString() != text;

    [Theory]
    [MemberData(nameof(Texts))]
    public void Recalculated_HostileText_IsTheSameText(string kind, string name) =>
        Assert.True(books.Cells($"{kind}_{name}").Count(c => c.Contains(HostileTexts.All[name], StringComparison.Ordinal)) >= (kind == "bid" ? 8 : 3));

    [Theory]
    [MemberData(nameof(Texts))]
    public void Write_HostileText_IsInNoFormula(string kind, string name)
    {
        var formulas = BookCells.Formulas(books[$"{kind}_{name}"]).ToList();
        Assert.Equal(kind == "customer", formulas.Count == 0);
        Assert.All(formulas, f => Assert.Matches("^[A-Za-z0-9_!:()+*/.,=\\- \"]+$", f.Formula));
    }
}
