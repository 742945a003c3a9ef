namespace Estimator.Cli.Import;

/// <summary>A fixture of a plan.</summary>
public sealed record NeutralFixture(string Kind, string Room, IReadOnlyList<decimal> At);
