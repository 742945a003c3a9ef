namespace Estimator.Cli.Import;

/// <summary>A room of a plan.</summary>
public sealed record NeutralRoom(
    string Id, string Name, string Type, IReadOnlyList<IReadOnlyList<decimal>> Polygon, decimal? HeightFt = null, IReadOnlyList<IReadOnlyList<IReadOnlyList<decimal>>>? Holes = null);
