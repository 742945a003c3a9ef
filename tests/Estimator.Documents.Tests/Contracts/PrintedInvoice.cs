using Estimator.Documents.Tests.Sums;

namespace Estimator.Documents.Tests.Contracts;

/// <summary>The figures of an invoice as they are printed.</summary>
/// <param name="Tables">The tables of the paper.</param>
internal sealed record PrintedInvoice(IReadOnlyList<PrintedTable> Tables)
{
    /// <summary>A sum by its label; zero where it is not printed.</summary>
    internal decimal this[string label] => Sums.Rows.FirstOrDefault(r => r.Text.StartsWith(label, StringComparison.Ordinal))?.Figures[^1] ?? 0;

    internal decimal Due => this["Due with this invoice"];

    internal decimal Contract => this["Contract, accepted changes included"];

    internal decimal AskedBefore => this["Asked for before"];

    internal decimal Open => this["Open after this invoice"];

    internal IReadOnlyList<decimal> Value => Column(1);

    internal IReadOnlyList<decimal> Before => Column(2);

    internal IReadOnlyList<decimal> Now => Column(3);

    internal IReadOnlyList<decimal> Left => Column(5);

    private PrintedTable Sums => Tables.Single(t => t.Heads == "What Amount");

    private IReadOnlyList<decimal> Column(int column) => Tables.FirstOrDefault(t => t.Heads.StartsWith("Work Value", StringComparison.Ordinal)) is { } schedule
        ? [.. schedule.Rows.Where(r => !r.Strong && r.Figures[column] is not null).Select(r => r.Figures[column]!.Value)] : [];
}
