namespace Estimator.Documents.Tests.Sums;

/// <summary>A line of a table on a paper.</summary>
/// <param name="Text">All of it.</param>
/// <param name="Strong">Whether it is bold: a total or the name of what follows.</param>
/// <param name="Figures">Its figures, by the heads from the left; null where none stands under a head.</param>
internal sealed record PrintedRow(string Text, bool Strong, IReadOnlyList<decimal?> Figures)
{
    /// <summary>Whether it adds up lines above it.</summary>
    internal bool IsTotal => Strong && Figures.Any(f => f is not null);

    /// <summary>Whether it names the lines below it.</summary>
    internal bool IsBand => Strong && !IsTotal;
}
