using System.Collections.Immutable;
using Estimator.Engine.Purchase.PriceFiles;

namespace Estimator.Documents.Prices;

/// <summary>What a price file says by a matching of its columns.</summary>
/// <param name="Rows">The rows that could be read.</param>
/// <param name="Problems">What is wrong in the others; no more than <see cref="MostProblems"/> are kept.</param>
/// <param name="WrongRows">How many rows are wrong.</param>
public sealed record PriceFileRows(ImmutableArray<PriceRow> Rows, ImmutableArray<RowProblem> Problems, int WrongRows)
{
    /// <summary>Most problems that are kept.</summary>
    public const int MostProblems = 1000;

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="head">Its beginning.</param>
    /// <param name="matching">Which of its headings says what.</param>
    /// <param name="token">Ends the reading.</param>
    /// <exception cref="InvalidDataException">The file can't be read.</exception>
    public static PriceFileRows Read(string path, PriceFileHead head, ColumnMatching matching, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(head);
        var reading = new PriceRowReading(head.Headings, matching, head.DayZero);
        var (rows, problems, wrong) = (ImmutableArray.CreateBuilder<PriceRow>(), ImmutableArray.CreateBuilder<RowProblem>(), 0);
        foreach (var (number, cells) in PriceFile.Rows(path).Where(r => r.Row > head.HeadingRow))
        {
            token.ThrowIfCancellationRequested();
            var (row, found) = reading.Read(number, cells);
            if (row is not null)
            {
                rows.Add(row);
                continue;
            }

            wrong++;
            problems.AddRange(found.Take(MostProblems - problems.Count));
        }

        return new PriceFileRows(rows.ToImmutable(), problems.ToImmutable(), wrong);
    }
}
