using System.Text.Json;
using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Rules;

/// <summary>A row of a rule table, ready to be read and cited.</summary>
public sealed class RuleRow
{
    /// <summary>The column of tables that have but one.</summary>
    public const string OnlyColumn = "value";

    private readonly RuleRowFile _file;

    internal RuleRow(RuleTable table, RuleRowFile file) => (Table, _file) = (table, file);

    /// <summary>The table it stands in.</summary>
    public RuleTable Table { get; }

    /// <summary>Stable key.</summary>
    public string Key => _file.Key;

    /// <summary>What it is.</summary>
    public string Label => _file.Label.Length > 0 ? _file.Label : Table.File.Title;

    /// <summary>Where it was read.</summary>
    public RuleSource Source => _file.Source ?? Table.File.Source;

    /// <summary>On what it rests.</summary>
    public string Basis => _file.Basis ?? Table.File.Basis;

    /// <summary>Unit of its figure.</summary>
    public string Unit => _file.Unit ?? Table.File.Unit;

    /// <summary>Names of its columns.</summary>
    public IEnumerable<string> Columns => _file.Cells.Keys;

    /// <summary>Whether the cell is there and not blank.</summary>
    public bool Has(string column) => _file.Cells.TryGetValue(column, out var cell) && cell.ValueKind is not JsonValueKind.Null;

    /// <summary>The number in a cell.</summary>
    /// <exception cref="InvalidDataException">The cell is blank or no number.</exception>
    public decimal Number(string column = OnlyColumn) =>
        _file.Cells.TryGetValue(column, out var cell) && cell.ValueKind is JsonValueKind.Number
            ? cell.GetDecimal()
            : throw new InvalidDataException($"Rule table {Table.Id}, row {Key}: {column} is not a number.");

    /// <summary>The word in a cell.</summary>
    /// <exception cref="InvalidDataException">The cell is blank or no word.</exception>
    public string Text(string column = OnlyColumn) =>
        _file.Cells.TryGetValue(column, out var cell) && cell.ValueKind is JsonValueKind.String
            ? cell.GetString()!
            : throw new InvalidDataException($"Rule table {Table.Id}, row {Key}: {column} is not a word.");

    /// <summary>The yes or no in a cell; a missing cell is no.</summary>
    public bool Flag(string column) => _file.Cells.TryGetValue(column, out var cell) && cell.ValueKind is JsonValueKind.True;

    /// <summary>Whether the row stands in an edition, given by its year.</summary>
    public bool StandsIn(int year) => (!Has("from_edition") || year >= Number("from_edition")) && (!Has("to_edition") || year <= Number("to_edition"));

    /// <summary>The number in a cell, taken as inches.</summary>
    public Length Inches(string column = OnlyColumn) => Length.FromInches(Number(column));

    /// <summary>The number in a cell, taken as feet.</summary>
    public Length Feet(string column = OnlyColumn) => Length.FromFeet(Number(column));

    /// <summary>The number in a cell as an explained leaf.</summary>
    public Fact Read(PageWriter page, Unit unit, string column = OnlyColumn) =>
        page.Row(Table.Id, CellKey(column), Label, Number(column), unit);

    /// <summary>The number in a cell, in inches, as an explained length.</summary>
    public Fact ReadInches(PageWriter page, string column = OnlyColumn) => page.Row(Table.Id, CellKey(column), Label, Inches(column));

    /// <summary>The number in a cell, in feet, as an explained length.</summary>
    public Fact ReadFeet(PageWriter page, string column = OnlyColumn) => page.Row(Table.Id, CellKey(column), Label, Feet(column));

    private string CellKey(string column) => column == OnlyColumn ? Key : $"{Key}.{column}";
}
