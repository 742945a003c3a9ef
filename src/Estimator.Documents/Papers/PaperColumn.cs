namespace Estimator.Documents.Papers;

/// <summary>What stands in the cells of a column.</summary>
internal enum CellKind
{
    /// <summary>Words, at the left, wrapped.</summary>
    Words = 1,

    /// <summary>Figures, at the right.</summary>
    Figures,

    /// <summary>A square to tick off.</summary>
    Tick,

    /// <summary>A space to write in.</summary>
    Blank,
}

/// <summary>A column of a table.</summary>
/// <param name="Head">Its head, which stands on every page.</param>
/// <param name="Share">Its share of the width, against the others'.</param>
/// <param name="Kind">What stands in it.</param>
internal sealed record PaperColumn(string Head, double Share, CellKind Kind = CellKind.Words)
{
    /// <summary>A column of figures.</summary>
    internal static PaperColumn Figures(string head, double share) => new(head, share, CellKind.Figures);

    /// <summary>A column of squares to tick off.</summary>
    internal static PaperColumn Tick(string head, double share) => new(head, share, CellKind.Tick);

    /// <summary>A column to write in.</summary>
    internal static PaperColumn Blank(string head, double share) => new(head, share, CellKind.Blank);
}
