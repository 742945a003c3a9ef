using System.Collections.Immutable;

namespace Estimator.Engine.Wiring.Circuits;

/// <summary>How the units of a circuit hang together: which box feeds which, from the panel on.</summary>
/// <param name="Links">Feeding links in the order in which they were added; the first leaves the panel.</param>
/// <param name="CostE4">Planning cost of the links, in ten-thousandths of a dollar.</param>
internal sealed record FeedTree(ImmutableArray<FeedLink> Links, long CostE4);
