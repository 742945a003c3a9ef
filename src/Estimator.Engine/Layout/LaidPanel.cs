using Estimator.Engine.Framing;
using Estimator.Engine.House;

namespace Estimator.Engine.Layout;

/// <summary>A panel in its place.</summary>
/// <param name="Source">What the user stated.</param>
/// <param name="Place">Where.</param>
public sealed record LaidPanel(Panel Source, Placement Place);
