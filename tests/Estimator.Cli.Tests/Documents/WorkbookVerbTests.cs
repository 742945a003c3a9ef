namespace Estimator.Cli.Tests.Documents;

/// <summary>The verbs write a workbook whole, or none.</summary>
public sealed class WorkbookVerbTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("workbooks").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("takeoff", "sample:basement-finish")]
    [InlineData("takeoff", "sample:basement-finish", "--book", "crew")]
    [InlineData("takeoff", "sample:basement-finish", "--book", "permit")]
    [InlineData("buy", "sample:basement-finish", "sample:two-storey-house")]
    public void Workbook_OfASample_IsAPackage(params string[] words)
    {
        var path = Path.Combine(_folder, "book.xlsx");
        Assert.Equal(0, Run([.. words, "--workbook", path], out _));
        using var package = System.IO.Compression.ZipFile.OpenRead(path);
        Assert.Contains(package.Entries, e => e.FullName == "xl/workbook.xml");
        Assert.Equal(["book.xlsx"], Directory.GetFiles(_folder).Select(Path.GetFileName));
    }

    [Theory]
    [InlineData("takeoff")]
    [InlineData("buy")]
    public void Workbook_InAFolderThatIsNot_IsRefusedWithItsPath(string verb)
    {
        var path = Path.Combine(_folder, "none", "book.xlsx");
        Assert.Equal(2, Run([verb, "sample:basement-finish", "--workbook", path], out var error));
        Assert.Contains(path, error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(_folder));
    }

    [Theory]
    [InlineData()]
    [InlineData("--paper", "permit")]
    [InlineData("--paper", "crew")]
    [InlineData("--paper", "budget")]
    public void Paper_OfASample_IsAPdf(params string[] words)
    {
        var path = Path.Combine(_folder, "paper.pdf");
        Assert.Equal(0, Run(["takeoff", "sample:basement-finish", "--pdf", path, .. words], out _));
        Assert.StartsWith("%PDF-1.", File.ReadLines(path).First(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--paper", "poster", "--pdf")]
    [InlineData("--book", "poster", "--workbook")]
    public void Paper_Unknown_IsRefusedAndNothingIsWritten(string option, string word, string writes)
    {
        Assert.Equal(2, Run(["takeoff", "sample:basement-finish", writes, Path.Combine(_folder, "out"), option, word], out var error));
        Assert.Contains(word, error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(_folder));
    }

    [Theory]
    [InlineData("pulllist", "run,circuit,circuit_name")]
    [InlineData("boxcontents", "label,box,joint")]
    [InlineData("explanations", "node,label,value")]
    [InlineData("circuits", "circuit,name,panel")]
    [InlineData("cutplan", "item,coil,coil_ft")]
    public void Table_Named_IsTheOneWritten(string table, string columns)
    {
        var path = Path.Combine(_folder, "out.csv");
        Assert.Equal(0, Run(["takeoff", "sample:basement-finish", "--csv", path, "--table", table], out _));
        Assert.StartsWith(columns, File.ReadLines(path).First().TrimStart('\ufeff'), StringComparison.Ordinal);
    }

    private static int Run(string[] words, out string message)
    {
        using var error = new StringWriter();
        var code = Verbs.Run(words, TextReader.Null, TextWriter.Null, error);
        message = error.ToString();
        return code;
    }
}
