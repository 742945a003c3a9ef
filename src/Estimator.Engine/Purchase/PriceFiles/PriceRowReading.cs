using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase.PriceFiles;

/// <summary>Reads the rows of a price file by a matching of its columns.</summary>
public sealed class PriceRowReading
{
    /// <summary>Longest text of a cell that is kept, in characters.</summary>
    public const int LongestText = 200;

    private readonly ColumnMatching _matching;
    private readonly Dictionary<PriceColumn, int> _at = [];
    private readonly DateOnly? _dayZero;
    private readonly bool _byThePack;
    private readonly Dictionary<string, Parsed<PriceUnit>> _units = new(StringComparer.Ordinal);

    /// <summary>Prepares the reading.</summary>
    /// <param name="headings">The headings of the file, from the left.</param>
    /// <param name="matching">Which of them says what; headings that the file lacks are passed over.</param>
    /// <param name="dayZero">Day 0 of a workbook's day numbers; null where the file is none.</param>
    public PriceRowReading(IReadOnlyList<string> headings, ColumnMatching matching, DateOnly? dayZero)
    {
        ArgumentNullException.ThrowIfNull(headings);
        ArgumentNullException.ThrowIfNull(matching);
        (_matching, _dayZero) = (matching, dayZero);
        _byThePack = matching.Headings.GetValueOrDefault(PriceColumn.PricedBy) == ColumnMatching.ByThePack;
        foreach (var (column, heading) in matching.Headings)
        {
            for (var i = 0; i < headings.Count && !_at.ContainsKey(column); i++)
            {
                if (headings[i] == heading)
                {
                    _at[column] = i;
                }
            }
        }
    }

    /// <summary>The row, or what is wrong in it.</summary>
    /// <param name="row">Its row in the file, from 1.</param>
    /// <param name="cells">Its cells, from the left.</param>
    public (PriceRow? Row, IReadOnlyList<RowProblem> Problems) Read(int row, IReadOnlyList<string> cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        List<RowProblem>? problems = null;
        string Text(PriceColumn column) => _at.TryGetValue(column, out var at) && at < cells.Count ? cells[at].Trim() : "";
        void Wrong(PriceColumn column, string text) => (problems ??= []).Add(new RowProblem(row, _matching.Headings.GetValueOrDefault(column, $"{column}"), text));
        T? Take<T>(PriceColumn column, Func<string, Parsed<T>> read)
            where T : struct
        {
            if (Text(column) is not { Length: > 0 } text)
            {
                return null;
            }

            var parsed = read(text);
            if (!parsed.Ok)
            {
                Wrong(column, parsed.Problem);
            }

            return parsed.Ok ? parsed.Value : null;
        }

        string Kept(PriceColumn column)
        {
            var text = Text(column);
            if (text.Length > LongestText)
            {
                Wrong(column, FormattableString.Invariant($"Found {text.Length} characters; up to {LongestText} are accepted."));
            }

            return text;
        }

        var price = Take(PriceColumn.Price, PriceCell.Price);
        if (price is null && Text(PriceColumn.Price).Length == 0)
        {
            Wrong(PriceColumn.Price, "Found no price; a price in dollars is accepted.");
        }

        var unit = _byThePack && Text(PriceColumn.PackSize).Length > 0 && PriceCell.Pack(Text(PriceColumn.PackSize)) is { Ok: true } whole
            ? Parsed<PriceUnit>.Success(new PriceUnit(whole.Value, true)) : Unit(Text(PriceColumn.PricedBy));
        if (!unit.Ok)
        {
            Wrong(PriceColumn.PricedBy, unit.Problem);
        }

        var gtin = Take(PriceColumn.Gtin, Gtin.Read);
        var pack = Take(PriceColumn.PackSize, PriceCell.Pack);
        var quoted = Take(PriceColumn.QuotedOn, t => PriceCell.Day(t, _dayZero));
        var expires = Take(PriceColumn.ExpiresOn, t => PriceCell.Day(t, _dayZero));
        var (item, number, description, make, series) = (Kept(PriceColumn.Item), Kept(PriceColumn.Number), PriceCell.Short(Text(PriceColumn.Description)), Kept(PriceColumn.Make), Kept(PriceColumn.Series));
        if (item.Length == 0 && number.Length == 0 && Text(PriceColumn.Gtin).Length == 0)
        {
            Wrong(_matching.Headings.Keys.FirstOrDefault(c => c is PriceColumn.Item or PriceColumn.Number or PriceColumn.Gtin, PriceColumn.Item), "Found no item; an item id, an item number or a GTIN is accepted.");
        }

        return problems is null
            ? (new PriceRow(row, item, number, gtin?.ToString() ?? "", description, price!.Value, unit.Value, pack, quoted, expires, make, series), [])
            : (null, problems);
    }

    // A file says few units, over and over.
    private Parsed<PriceUnit> Unit(string text)
    {
        const int Known = 1000;
        if (!_units.TryGetValue(text, out var unit))
        {
            unit = PriceUnit.Read(text);
            if (_units.Count < Known)
            {
                _units.Add(text, unit);
            }
        }

        return unit;
    }
}
