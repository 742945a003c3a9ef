namespace Estimator.Documents.Papers;

/// <summary>Sets a table on the pages of a paper: its heads on each, bands with the first row below, totals with the last row above.</summary>
internal sealed class TableSetting
{
    private const double Inset = 4;
    private const double Above = 2.5;
    private const double TickSide = 8;

    private readonly Paper _paper;
    private readonly PaperTable _table;
    private readonly double[] _widths;
    private readonly List<List<string>> _heads;
    private string _band = "";

    internal TableSetting(Paper paper, PaperTable table)
    {
        (_paper, _table) = (paper, table);
        var shares = table.Columns.Sum(c => c.Share);
        _widths = [.. table.Columns.Select(c => c.Share / shares * paper.Width)];
        _heads = [.. table.Columns.Select((c, i) => paper.Pen.Wrap(c.Head, PaperLook.Head, _widths[i] - 2 * Inset))];
    }

    private double HeadHeight => _heads.Max(h => h.Count) * PaperLook.Head.Line + 2 * Above;

    internal void Write()
    {
        var begun = false;
        foreach (var knot in Knots())
        {
            var height = knot.Sum(Height);
            if (!begun || _paper.Left < height)
            {
                Begin(height, knot[0]);
                begun = true;
            }

            foreach (var row in knot)
            {
                Place(row);
            }
        }
    }

    // Rows that must not be parted by the end of a page.
    private IEnumerable<List<PaperRow>> Knots()
    {
        var knot = new List<PaperRow>();
        for (var i = 0; i < _table.Rows.Count; i++)
        {
            knot.Add(_table.Rows[i]);
            var last = i + 1 == _table.Rows.Count;
            if (last || (_table.Rows[i].Kind is not RowKind.Band && _table.Rows[i + 1].Kind is not RowKind.Total))
            {
                yield return knot;
                knot = [];
            }
        }
    }

    // The heads, on a new page where the rows that come don't fit on this one, and the band again that they are under.
    private void Begin(double height, PaperRow next)
    {
        _paper.Need(HeadHeight + height);
        Heads();
        if (next.Kind is not RowKind.Band && _band.Length > 0)
        {
            var band = new PaperRow(RowKind.Band, [$"{_band}, continued"]);
            Part(band, Wrapped(band), 0, Wrapped(band)[0].Count);
        }
    }

    private void Heads()
    {
        var (x, y) = (Paper.LeftEdge, _paper.Y);
        for (var c = 0; c < _heads.Count; c++)
        {
            Lines(_heads[c], x, y + HeadHeight - Above - _heads[c].Count * PaperLook.Head.Line, c, PaperLook.Head);
            x += _widths[c];
        }

        _paper.Y += HeadHeight;
        _paper.Page.Rule(Paper.LeftEdge, Paper.LeftEdge + _paper.Width, _paper.Y, PaperLook.Dark);
    }

    // A row is taken apart only where no page holds it, or what it is tied to, whole.
    private void Place(PaperRow row)
    {
        var (cells, look) = (Wrapped(row), Look(row));
        var lines = Lines(cells);
        for (var from = 0; from < lines;)
        {
            var fit = (int)((_paper.Left - 2 * Above) / look.Line);
            if (fit < 1)
            {
                Begin(look.Line + 2 * Above, row);
                fit = Math.Max(1, (int)((_paper.Left - 2 * Above) / look.Line));
            }

            fit = Math.Min(fit, lines - from);
            Part(row, cells, from, fit);
            from += fit;
        }

        _band = row.Kind is RowKind.Band ? row.Cells[0] : _band;
    }

    private void Part(PaperRow row, List<List<string>> cells, int from, int count)
    {
        var look = Look(row);
        var height = count * look.Line + 2 * Above;
        var (x, page) = (Paper.LeftEdge, _paper.Page);
        Ground(row.Kind, height);
        for (var c = 0; c < cells.Count; c++)
        {
            Lines(cells[c].Skip(from).Take(count), x, _paper.Y + Above, c, look);
            if (row.Kind is RowKind.Plain && from == 0 && _table.Columns[c].Kind is CellKind.Tick)
            {
                page.Frame(x + Inset, _paper.Y + Above + (look.Line - TickSide) / 2, TickSide, TickSide, PaperLook.SoftInk);
            }

            x += _widths[c];
        }

        _paper.Y += height;
    }

    private void Ground(RowKind kind, double height)
    {
        var (x, y, page) = (Paper.LeftEdge, _paper.Y, _paper.Page);
        switch (kind)
        {
            case RowKind.Band:
                page.Band(x, y, _paper.Width, height, PaperLook.Sunk);
                break;
            case RowKind.Total:
                page.Rule(x, x + _paper.Width, y, PaperLook.Dark);
                break;
            case RowKind.Plain:
                page.Rule(x, x + _paper.Width, y + height, PaperLook.Hairline);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(kind), kind, "There is no such row.");
        }
    }

    private void Lines(IEnumerable<string> lines, double x, double y, int column, PaperLook look)
    {
        foreach (var line in lines)
        {
            if (_table.Columns[column].Kind is CellKind.Figures)
            {
                _paper.Page.TextEnding(x + _widths[column] - Inset, y, line, look);
            }
            else
            {
                _paper.Page.Text(x + Inset, y, line, look);
            }

            y += look.Line;
        }
    }

    private double Height(PaperRow row) => Lines(Wrapped(row)) * Look(row).Line + 2 * Above;

    private static int Lines(List<List<string>> cells) => Math.Max(1, cells.Max(c => c.Count));

    private List<List<string>> Wrapped(PaperRow row) => row.Kind is RowKind.Band
        ? [_paper.Pen.Wrap(row.Cells[0], Look(row), _paper.Width - 2 * Inset)]
        : [.. row.Cells.Select((cell, c) => cell.Length == 0 ? [] : _paper.Pen.Wrap(cell, Look(row), _widths[c] - 2 * Inset))];

    private static PaperLook Look(PaperRow row) => row.Kind is RowKind.Plain ? PaperLook.Cell : PaperLook.CellStrong;
}
