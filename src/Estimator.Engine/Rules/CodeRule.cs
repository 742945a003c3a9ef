namespace Estimator.Engine.Rules;

/// <summary>A rule as one edition has it.</summary>
/// <param name="Code">Stable code of the finding where it is not held.</param>
/// <param name="Article">Its article in that edition.</param>
/// <param name="Edition">What a finding names: the electrical code, or the building code that goes with it.</param>
/// <param name="InForce">Whether the edition has it.</param>
/// <param name="Verified">Whether its text in that edition was seen.</param>
public sealed record CodeRule(string Code, string Article, string Edition, bool InForce, bool Verified);
