namespace Estimator.Cli.Import;

/// <summary>Where a plan comes from.</summary>
public sealed record NeutralSource(string Dataset, string Licence, string Attribution);
