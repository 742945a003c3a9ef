namespace Estimator.Engine.House;

/// <summary>How the house lay when its wiring was frozen, so that studs and joists are counted from the same walls whatever is added.</summary>
/// <param name="SwapAxes">Whether the house was turned by a quarter.</param>
/// <param name="FlipX">Whether its first axis ran against the user's.</param>
/// <param name="FlipY">Whether its second axis ran against the user's.</param>
public sealed record PinnedPose(bool SwapAxes, bool FlipX, bool FlipY);
