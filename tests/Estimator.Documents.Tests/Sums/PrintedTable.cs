namespace Estimator.Documents.Tests.Sums;

/// <summary>A table as it stands on a paper, over as many pages as it has.</summary>
/// <param name="Heads">Its heads, in one line.</param>
/// <param name="Rows">Its lines.</param>
internal sealed record PrintedTable(string Heads, List<PrintedRow> Rows)
{
    /// <summary>Every printed total with the sum of what stands above it, back to the total before.</summary>
    internal IEnumerable<PrintedSum> Sums
    {
        get
        {
            var begin = 0;
            for (var i = 0; i < Rows.Count; i++)
            {
                if (!Rows[i].IsTotal)
                {
                    continue;
                }

                for (var c = 0; c < Rows[i].Figures.Count; c++)
                {
                    if (Rows[i].Figures[c] is { } printed)
                    {
                        yield return new PrintedSum(Heads, Rows[i].Text, printed, Rows[begin..i].Sum(r => r.Figures[c] ?? 0));
                    }
                }

                begin = i + 1;
            }
        }
    }

    /// <summary>Sum of a column, totals left out.</summary>
    internal decimal Sum(int column) => Rows.Where(r => !r.Strong).Sum(r => r.Figures[column] ?? 0);

    /// <summary>The lines under each name.</summary>
    internal IEnumerable<(string Band, List<PrintedRow> Rows)> Bands()
    {
        List<(string Band, List<PrintedRow> Rows)> bands = [];
        foreach (var row in Rows)
        {
            if (row.IsBand && !row.Text.EndsWith(", continued", StringComparison.Ordinal))
            {
                bands.Add((row.Text, []));
            }
            else if (bands.Count > 0 && !row.Strong)
            {
                bands[^1].Rows.Add(row);
            }
        }

        return bands;
    }
}
