namespace Estimator.Cli.Tests.Documents;

/// <summary>The verbs write a workbook whole, or none.</summary>
public sealed class WorkbookVerbTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("workbooks").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("takeoff", "sample:basement-finish")]
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
