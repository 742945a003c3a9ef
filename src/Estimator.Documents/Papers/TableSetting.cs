namespace Estimator.Documents.Papers;

/// <summary>Sets a table on the pages of a paper: its heads on each, bands with the first row below, totals with the last row above.</summary>
internal sealed class TableSetting
{
    private const double Inset = 4;
    private const double FigureInset = 7;
    private const double Above = 2.5;
    private const double TickSide = 8;
    private const int BandLines = 2;

    // So that no row is higher than a page; what is cut ends with a sign.
    private const int CellLines = 20;

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
        _heads = [.. table.Columns.Select((c, i) => paper.Pen.Wrap(c.Head, PaperLook.Head, Room(i)))];
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
            // The end of a long name gives way, so that one sees that it goes on.
            const string Continued = ", continued";
            var room = _paper.Width - 2 * Inset - _paper.Pen.Width(Continued, PaperLook.CellStrong);
            var band = _band;
            Place(new PaperRow(RowKind.Band, [$"{_paper.Pen.OneLine(band, PaperLook.CellStrong, room)}{Continued}"]));
            _band = band;
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

    private void Place(PaperRow row)
    {
        var (cells, look) = (Wrapped(row), Look(row));
        var height = Height(row);
        Ground(row.Kind, height);
        var x = Paper.LeftEdge;
        for (var c = 0; c < cells.Count; c++)
        {
            Lines(cells[c], x, _paper.Y + Above, c, look);
            if (row.Kind is RowKind.Plain && _table.Columns[c].Kind is CellKind.Tick)
            {
                _paper.Page.Frame(x + Inset, _paper.Y + Above + (look.Line - TickSide) / 2, TickSide, TickSide, PaperLook.SoftInk);
            }

            x += _widths[c];
        }

        _paper.Y += height;
        _band = row.Kind is RowKind.Band ? row.Cells[0] : _band;
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
                _paper.Page.TextEnding(x + _widths[column] - FigureInset, y, line, look);
            }
            else
            {
                _paper.Page.Text(x + Inset, y, line, look);
            }

            y += look.Line;
        }
    }

    private double Room(int column) => _widths[column] - Inset - (_table.Columns[column].Kind is CellKind.Figures ? FigureInset : Inset);

    private double Height(PaperRow row) => Math.Max(1, Wrapped(row).Max(c => c.Count)) * Look(row).Line + 2 * Above;

    private List<List<string>> Wrapped(PaperRow row) => row.Kind is RowKind.Band
        ? [_paper.Pen.Wrap(row.Cells[0], Look(row), _paper.Width - 2 * Inset, BandLines)]
        : [.. row.Cells.Select((cell, c) => cell.Length == 0 ? [] : _paper.Pen.Wrap(cell, Look(row), Room(c), CellLines))];

    private static PaperLook Look(PaperRow row) => row.Kind is RowKind.Plain ? PaperLook.Cell : PaperLook.CellStrong;
}
