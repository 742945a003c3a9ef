using System.Globalization;
using CsvHelper;

namespace Estimator.TestKit;

/// <summary>Reads a reference CSV file into rows by column.</summary>
public static class ReferenceCsv
{
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Read(string path)
    {
        using var reader = new StreamReader(path);
        using var csv = new CsvReader(reader, CultureInfo.InvariantCulture);
        return [.. csv.GetRecords<dynamic>().Select(r => (IReadOnlyDictionary<string, string>)((IDictionary<string, object>)r).ToDictionary(p => p.Key, p => (string)p.Value))];
    }
}
