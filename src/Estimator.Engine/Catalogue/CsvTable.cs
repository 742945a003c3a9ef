using System.Collections.Immutable;
using System.Text;

namespace Estimator.Engine.Catalogue;

/// <summary>A CSV file with a header row.</summary>
/// <remarks>Source: RFC 4180; quotes doubled, line breaks allowed in quotes.</remarks>
internal sealed class CsvTable
{
    private CsvTable(string name, ImmutableArray<CsvRow> rows) => (Name, Rows) = (name, rows);

    internal string Name { get; }

    internal ImmutableArray<CsvRow> Rows { get; }

    internal static CsvTable Empty(string name) => new(name, []);

    internal static CsvTable Read(string name, string text, ImmutableArray<string> columns, ImmutableArray<string> further, List<string> problems)
    {
        var records = Records(text.TrimStart('\ufeff'), name, problems).ToList();
        var needed = columns;
        columns = columns.AddRange(further.Where(f => records.Count > 0 && records[0].Fields.Contains(f)));
        if (records.Count == 0 || !records[0].Fields.SequenceEqual(columns))
        {
            problems.Add($"{name}, row 1: found '{(records.Count == 0 ? "" : string.Join(",", records[0].Fields))}', the header {string.Join(",", needed)} is accepted.");
            return Empty(name);
        }

        var rows = ImmutableArray.CreateBuilder<CsvRow>();
        foreach (var (line, fields) in records.Skip(1))
        {
            if (fields.Length == columns.Length)
            {
                rows.Add(new CsvRow(name, line, columns, fields));
            }
            else
            {
                problems.Add($"{name}, row {line}: found {fields.Length} cells, {columns.Length} are accepted.");
            }
        }

        return new CsvTable(name, rows.ToImmutable());
    }

    private static IEnumerable<(int Line, ImmutableArray<string> Fields)> Records(string text, string name, List<string> problems)
    {
        var fields = ImmutableArray.CreateBuilder<string>();
        var field = new StringBuilder();
        var (quoted, line, start) = (false, 1, 1);
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            line += c == '\n' ? 1 : 0;
            if (quoted)
            {
                var doubled = c == '"' && i + 1 < text.Length && text[i + 1] == '"';
                i += doubled ? 1 : 0;
                quoted = c != '"' || doubled;
                field.Append(quoted ? c : "");
            }
            else if (c == '"')
            {
                quoted = true;
            }
            else if (c is ',' or '\n')
            {
                fields.Add(field.ToString());
                field.Clear();
                if (c == '\n')
                {
                    if (fields.Count > 1 || fields[0].Length > 0)
                    {
                        yield return (start, fields.ToImmutable());
                    }

                    fields.Clear();
                    start = line;
                }
            }
            else if (c != '\r')
            {
                field.Append(c);
            }
        }

        if (quoted)
        {
            problems.Add($"{name}, row {start}: found a quoted cell that is not closed, a closing \" is accepted.");
        }

        if (field.Length > 0 || fields.Count > 0)
        {
            fields.Add(field.ToString());
            yield return (start, fields.ToImmutable());
        }
    }
}
