using System.Collections.Immutable;
using Estimator.Engine.Wiring.Joints;

namespace Estimator.Engine.Wiring.Routing;

/// <summary>A cable that is wanted between two nodes, with what each insulated conductor is for.</summary>
/// <param name="From">The node it leaves.</param>
/// <param name="To">The box it enters.</param>
/// <param name="Role">What it carries.</param>
/// <param name="Nets">The net of each insulated conductor; a grounding conductor goes with them.</param>
internal sealed record CableLeg(int From, int To, RunRole Role, ImmutableArray<Net> Nets);
