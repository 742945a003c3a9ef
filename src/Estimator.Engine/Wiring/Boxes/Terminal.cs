namespace Estimator.Engine.Wiring.Boxes;

/// <summary>Where a device or luminaire meets a net.</summary>
/// <param name="Net">The net.</param>
/// <param name="Lead">Whether it comes as a wire lead that must be spliced, or as a screw that takes a conductor.</param>
internal readonly record struct Terminal(Net Net, bool Lead);
