namespace Estimator.Documents.Tables;

/// <summary>A cell of a table: a text, which may be anything that a user typed, or a number that we wrote.</summary>
/// <param name="Text">What stands in it.</param>
/// <param name="IsNumber">Whether we wrote it as a number, so that its minus sign starts no formula.</param>
internal readonly record struct CsvCell(string Text, bool IsNumber = false)
{
    /// <summary>A text is a cell as it is.</summary>
    public static implicit operator CsvCell(string text) => new(text);
}
