using System.Collections.Immutable;

namespace Estimator.Engine.Explanations;

/// <summary>One node, put together from the flat arrays of its page for reading.</summary>
/// <param name="Ref">Where it lies.</param>
/// <param name="Operation">How the value follows from the inputs.</param>
/// <param name="Rule">Stable id of the rule that made it; for a leaf the job-file path, or table and row as <c>table:key</c>.</param>
/// <param name="Label">What it is, in trade words.</param>
/// <param name="Value">The value in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Inputs">The nodes it was made from.</param>
public sealed record ExplanationNode(
    NodeRef Ref, Operation Operation, string Rule, string Label, decimal Value, Unit Unit, ImmutableArray<NodeRef> Inputs);
