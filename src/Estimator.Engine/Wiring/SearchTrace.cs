using System.Collections.Immutable;
using Estimator.Engine.Wiring.Circuits;

namespace Estimator.Engine.Wiring;

/// <summary>The plans of a group that were the best when the search found them, so that a test can pin each and compare.</summary>
/// <param name="Group">The group.</param>
/// <param name="Units">Its units.</param>
/// <param name="Plans">The partitions of its units into circuits, the answer last.</param>
internal sealed record SearchTrace(WiringGroup Group, ImmutableArray<WiringUnit> Units, ImmutableArray<ImmutableArray<ImmutableArray<int>>> Plans);
