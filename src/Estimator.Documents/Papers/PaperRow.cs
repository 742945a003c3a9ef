using System.Collections.Immutable;

namespace Estimator.Documents.Papers;

/// <summary>What a row is to the reader.</summary>
internal enum RowKind
{
    /// <summary>One of many.</summary>
    Plain = 1,

    /// <summary>Names the rows below; stays with the first of them.</summary>
    Band,

    /// <summary>Adds up the rows above; stays with the last of them.</summary>
    Total,
}

/// <summary>A row of a table.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Cells">Its cells; a band has one.</param>
internal sealed record PaperRow(RowKind Kind, ImmutableArray<string> Cells);
