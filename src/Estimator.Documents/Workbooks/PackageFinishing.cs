using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Estimator.Documents.Workbooks;

/// <summary>Gives a saved package what the library leaves out: shown values of formulas, and names and dates that are the same each time.</summary>
/// <remarks>Readers that don't calculate, such as previews, show the values that stand beside the formulas.</remarks>
internal static partial class PackageFinishing
{
    private const string CoreProperties = "package/services/metadata/core-properties/core.psmdcp";
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static readonly DateTimeOffset Always = new(2000, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The finished package.</summary>
    /// <param name="saved">The package as the library saved it.</param>
    /// <param name="shown">Value by address of the formulas of each sheet, in sheet order.</param>
    internal static byte[] Finish(Stream saved, IReadOnlyList<IReadOnlyDictionary<string, object>> shown)
    {
        using var finished = new MemoryStream();
        using (var source = new ZipArchive(saved, ZipArchiveMode.Read, leaveOpen: true))
        using (var target = new ZipArchive(finished, ZipArchiveMode.Create, leaveOpen: true))
        {
            var core = source.Entries.Single(e => e.FullName.EndsWith(".psmdcp", StringComparison.Ordinal)).FullName;
            foreach (var entry in source.Entries.OrderBy(e => e.FullName, StringComparer.Ordinal))
            {
                Copy(entry, target, core, shown);
            }
        }

        return finished.ToArray();
    }

    private static void Copy(ZipArchiveEntry entry, ZipArchive target, string core, IReadOnlyList<IReadOnlyDictionary<string, object>> shown)
    {
        var copy = target.CreateEntry(entry.FullName == core ? CoreProperties : entry.FullName, CompressionLevel.Fastest);
        copy.LastWriteTime = Always;
        using var from = entry.Open();
        using var to = copy.Open();
        var sheet = SheetName().Match(entry.FullName);
        if (sheet.Success && shown[int.Parse(sheet.Groups["number"].ValueSpan, CultureInfo.InvariantCulture) - 1] is { Count: > 0 } values)
        {
            WithValues(from, values).Save(to, SaveOptions.DisableFormatting);
        }
        else if (entry.FullName is "_rels/.rels" or "[Content_Types].xml")
        {
            to.Write(Encoding.UTF8.GetBytes(Renamed(new StreamReader(from).ReadToEnd(), core)));
        }
        else if (entry.FullName == "xl/workbook.xml")
        {
            // Rows to repeat are written without their dollar signs, and some programs then repeat none.
            to.Write(Encoding.UTF8.GetBytes(RepeatedRows().Replace(new StreamReader(from).ReadToEnd(), "!$$${first}:$$${last}<")));
        }
        else if (entry.FullName == core)
        {
            to.Write(Encoding.UTF8.GetBytes(Dates().Replace(new StreamReader(from).ReadToEnd(), ">2000-01-01T00:00:00Z<")));
        }
        else
        {
            from.CopyTo(to);
        }
    }

    private static XDocument WithValues(Stream from, IReadOnlyDictionary<string, object> values)
    {
        var sheet = XDocument.Load(from);
        foreach (var cell in sheet.Descendants(Main + "c").Where(c => c.Element(Main + "f") is not null))
        {
            var value = values[cell.Attribute("r")!.Value];
            cell.SetAttributeValue("t", value is string ? "str" : null);
            cell.Elements(Main + "v").Remove();
            cell.Add(new XElement(Main + "v", Convert.ToString(value, CultureInfo.InvariantCulture)));
        }

        return sheet;
    }

    // The library draws these names by lot.
    private static string Renamed(string text, string core)
    {
        var number = 0;
        return LotteryIds().Replace(text.Replace(core, CoreProperties, StringComparison.Ordinal), _ => $"Id=\"rel{(++number).ToString(CultureInfo.InvariantCulture)}\"");
    }

    [GeneratedRegex(@"^xl/worksheets/sheet(?<number>\d+)\.xml$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex SheetName();

    [GeneratedRegex(@"Id=""R[0-9a-f]{16}""", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex LotteryIds();

    [GeneratedRegex(@"!(?<first>\d+):(?<last>\d+)<", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex RepeatedRows();

    [GeneratedRegex(@">\d{4}-\d\d-\d\dT[^<]*<", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Dates();
}
