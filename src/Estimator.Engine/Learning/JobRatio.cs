namespace Estimator.Engine.Learning;

/// <summary>What one closed job says of a figure of the tables.</summary>
/// <param name="JobId">The job.</param>
/// <param name="Estimated">What the tables gave for it, above zero, without what was learned before: hours, feet or pieces.</param>
/// <param name="Actual">What it took.</param>
public sealed record JobRatio(string JobId, decimal Estimated, decimal Actual)
{
    /// <summary>Actual to estimated.</summary>
    public decimal Ratio => Actual / Estimated;
}
