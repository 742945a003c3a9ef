namespace Estimator.Engine.Learning;

/// <summary>What several jobs say together.</summary>
/// <param name="Jobs">How many jobs.</param>
/// <param name="Factor">By what the table's figure is multiplied: between the table's own 1 and what the jobs say.</param>
/// <param name="Low">Low end of the interval.</param>
/// <param name="High">High end of the interval.</param>
public sealed record Pooled(int Jobs, decimal Factor, decimal Low, decimal High);
