namespace Estimator.Cli.Import;

/// <summary>An opening of a plan.</summary>
public sealed record NeutralOpening(
    string Id, string Kind, IReadOnlyList<string?> Rooms, IReadOnlyList<decimal> At, decimal WidthFt, decimal? SillFt = null, decimal? HeadFt = null);
