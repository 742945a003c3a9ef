using System.Diagnostics;
using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace Estimator.Documents.Tests;

/// <summary>Recalculates workbooks in another spreadsheet program: all of them in one call, with a profile that makes it calculate every formula anew.</summary>
/// <remarks>Without that profile it shows the values that stand in the file, and a test would compare those with themselves.</remarks>
public static class LibreOffice
{
    private const string Recalculating = """
        <?xml version="1.0" encoding="UTF-8"?>
        <oor:items xmlns:oor="http://openoffice.org/2001/registry">
        <item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
        </oor:items>
        """;

    private const string EverySheetAsCsv = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1";

    private static bool Installed => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(':').Any(folder => File.Exists(Path.Combine(folder, "soffice")));

    /// <summary>Cells by book and sheet, as rows of texts.</summary>
    public static Dictionary<(string Book, string Sheet), List<string[]>> Recalculate(IReadOnlyDictionary<string, byte[]> books)
    {
        if (!Installed)
        {
            throw new InvalidOperationException("soffice is not installed, so no workbook can be recalculated: install LibreOffice Calc (Debian: libreoffice-calc).");
        }

        var folder = Directory.CreateTempSubdirectory("recalculated").FullName;
        try
        {
            Directory.CreateDirectory(Path.Combine(folder, "profile", "user"));
            File.WriteAllText(Path.Combine(folder, "profile", "user", "registrymodifications.xcu"), Recalculating);
            foreach (var (name, bytes) in books)
            {
                File.WriteAllBytes(Path.Combine(folder, $"{name}.xlsx"), bytes);
            }

            Run(folder, books.Keys);
            return Directory.GetFiles(folder, "*.csv").ToDictionary(Name, Read);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Run(string folder, IEnumerable<string> books)
    {
        var start = new ProcessStartInfo("soffice") { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        foreach (var word in (string[])[$"-env:UserInstallation=file://{folder}/profile", "--headless", "--convert-to", EverySheetAsCsv, "--outdir", folder, .. books.Select(b => $"{b}.xlsx")])
        {
            start.ArgumentList.Add(word);
        }

        using var process = Process.Start(start)!;
        process.BeginErrorReadLine();
        process.BeginOutputReadLine();
        Assert.True(process.WaitForExit(TimeSpan.FromMinutes(5)), "The spreadsheet program did not end in five minutes.");
    }

    private static (string Book, string Sheet) Name(string path)
    {
        var name = Path.GetFileNameWithoutExtension(path);
        var dash = name.IndexOf('-', StringComparison.Ordinal);
        return (name[..dash], name[(dash + 1)..]);
    }

    private static List<string[]> Read(string path)
    {
        using var parser = new CsvParser(new StreamReader(path), new CsvConfiguration(CultureInfo.InvariantCulture) { IgnoreBlankLines = false, HasHeaderRecord = false });
        var rows = new List<string[]>();
        while (parser.Read())
        {
            rows.Add(parser.Record!);
        }

        return rows;
    }
}
