namespace Estimator.Engine.Rules;

/// <summary>What a protection rule says of an outlet.</summary>
/// <param name="Required">Whether protection is asked for.</param>
/// <param name="Row">The row that asks for it; null where none does.</param>
/// <param name="Article">Its article; empty where none asks.</param>
/// <param name="Verified">Whether the text of the edition was seen.</param>
public sealed record ProtectionRule(bool Required, RuleRow? Row, string Article, bool Verified);
