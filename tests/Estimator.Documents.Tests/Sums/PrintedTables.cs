using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Estimator.Documents.Tests.Sums;

/// <summary>Reads the tables of a PDF by where their words stand, with a library that had no part in writing it.</summary>
/// <remarks>Heads are small and bold, totals and names of parts are bold, and a figure ends where the head of its column ends. A table whose heads stand again on the next page goes on.</remarks>
internal sealed class PrintedTables
{
    private const double SameLine = 2.5;
    private const double SameEdge = 0.8;
    private const double WordGap = 4;
    private const double HeadPoints = 8;
    private const double CellPoints = 9;
    private const double SamePoints = 0.3;

    private readonly List<PrintedTable> _tables = [];
    private List<double> _edges = [];

    private PrintedTables()
    {
    }

    /// <summary>The tables of a paper, in the order of reading.</summary>
    internal static IReadOnlyList<PrintedTable> Of(byte[] pdf)
    {
        var read = new PrintedTables();
        using var document = PdfDocument.Open(pdf);
        foreach (var page in document.GetPages())
        {
            read.Read(page);
        }

        return read._tables;
    }

    private void Read(Page page)
    {
        var (fresh, head) = (true, new List<List<Word>>());
        foreach (var line in Lines(page))
        {
            if (IsHead(line))
            {
                head.Add(line);
                continue;
            }

            if (head.Count > 0)
            {
                Begin(head, fresh);
                (fresh, head) = (false, []);
            }

            if (_tables.Count > 0 && line.All(w => Math.Abs(w.Letters[0].PointSize - CellPoints) < SamePoints))
            {
                _tables[^1].Rows.Add(new PrintedRow(string.Join(' ', line.Select(w => w.Text)), line.All(IsBold), [.. _edges.Select(edge => Figure(line, edge))]));
            }
        }
    }

    private void Begin(List<List<Word>> head, bool fresh)
    {
        var heads = string.Join(' ', head.SelectMany(l => l).Select(w => w.Text));
        _edges = [.. head.SelectMany(Ends).Order().Aggregate(new List<double>(), (edges, x) => edges.Count > 0 && x - edges[^1] < SameEdge ? edges : [.. edges, x])];
        if (!fresh || _tables.Count == 0 || _tables[^1].Heads != heads || _tables[^1].Rows.Any(r => r.IsTotal))
        {
            _tables.Add(new PrintedTable(heads, []));
        }
    }

    // The words that end at an edge, as far as they stand together.
    private static decimal? Figure(List<Word> line, double edge)
    {
        var last = line.FindIndex(w => Math.Abs(w.BoundingBox.Right - edge) < SameEdge);
        if (last < 0)
        {
            return null;
        }

        var first = last;
        while (first > 0 && line[first].BoundingBox.Left - line[first - 1].BoundingBox.Right < WordGap)
        {
            first--;
        }

        return PrintedFigure.Of(string.Join(' ', line[first..(last + 1)].Select(w => w.Text)));
    }

    // Where each head of a line ends; words that stand together are one head.
    private static IEnumerable<double> Ends(List<Word> line) => line.Where((w, i) => i + 1 == line.Count || line[i + 1].BoundingBox.Left - w.BoundingBox.Right >= WordGap).Select(w => w.BoundingBox.Right);

    private static bool IsHead(List<Word> line) => line.All(w => IsBold(w) && Math.Abs(w.Letters[0].PointSize - HeadPoints) < SamePoints);

    private static bool IsBold(Word word) => word.FontName?.Contains("Bold", StringComparison.Ordinal) == true;

    private static IEnumerable<List<Word>> Lines(Page page)
    {
        var lines = new List<List<Word>>();
        foreach (var word in page.GetWords().OrderByDescending(w => w.Letters[0].StartBaseLine.Y))
        {
            if (lines.Count > 0 && lines[^1][0].Letters[0].StartBaseLine.Y - word.Letters[0].StartBaseLine.Y < SameLine)
            {
                lines[^1].Add(word);
            }
            else
            {
                lines.Add([word]);
            }
        }

        return lines.Select(l => l.OrderBy(w => w.BoundingBox.Left).ToList());
    }
}
