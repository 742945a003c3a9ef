namespace Estimator.Engine.Explanations;

/// <summary>Where a node lies: the page of the group that made it, and its index there.</summary>
/// <param name="Page">Page number in the <see cref="ExplanationBook"/>.</param>
/// <param name="Index">Index on that page.</param>
public readonly record struct NodeRef(int Page, int Index);
