using System.Collections.Immutable;
using Estimator.Engine.Findings;

namespace Estimator.Engine.Controls;

/// <summary>Which switch acts on what.</summary>
/// <param name="Groups">The groups, in canonical order.</param>
/// <param name="Findings">What was proposed or is left without a control.</param>
public sealed record ControlPlan(ImmutableArray<ControlGroup> Groups, ImmutableArray<Finding> Findings);
