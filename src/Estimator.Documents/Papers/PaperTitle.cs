using System.Collections.Immutable;

namespace Estimator.Documents.Papers;

/// <summary>What stands in the title block and at the foot of the first page.</summary>
/// <param name="Kind">What the paper is, such as <c>Bid</c>.</param>
/// <param name="Job">Name of the job.</param>
/// <param name="Letterhead">Who sends it, to whom, when.</param>
internal sealed record PaperTitle(string Kind, string Job, Letterhead Letterhead)
{
    /// <summary>What must be read before anything is done; a line each.</summary>
    internal ImmutableArray<string> Cautions { get; init; } = Documents.Cautions.Safety;

    /// <summary>Whether its pages lie on their long side.</summary>
    internal bool Landscape { get; init; }
}
