using System.Collections.Immutable;

namespace Estimator.Documents.Papers;

/// <summary>A table: its columns, and its rows in order.</summary>
/// <param name="columns">The columns.</param>
internal sealed class PaperTable(params ImmutableArray<PaperColumn> columns)
{
    private readonly List<PaperRow> _rows = [];

    internal ImmutableArray<PaperColumn> Columns => columns;

    internal IReadOnlyList<PaperRow> Rows => _rows;

    /// <summary>A row; cells that are left out at the end stay empty.</summary>
    internal void Row(params ReadOnlySpan<string> cells) => Add(RowKind.Plain, cells);

    /// <summary>A row that adds up those above.</summary>
    internal void Total(params ReadOnlySpan<string> cells) => Add(RowKind.Total, cells);

    /// <summary>A line over all columns that names the rows below it.</summary>
    internal void Band(string text) => _rows.Add(new PaperRow(RowKind.Band, [text]));

    private void Add(RowKind kind, ReadOnlySpan<string> cells)
    {
        if (cells.Length > columns.Length)
        {
            throw new ArgumentException($"A row has {cells.Length} cells and the table {columns.Length} columns.", nameof(cells));
        }

        var row = ImmutableArray.CreateBuilder<string>(columns.Length);
        row.AddRange(cells);
        row.AddRange(Enumerable.Repeat("", columns.Length - cells.Length));
        _rows.Add(new PaperRow(kind, row.MoveToImmutable()));
    }
}
