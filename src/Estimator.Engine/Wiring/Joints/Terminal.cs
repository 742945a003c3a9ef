namespace Estimator.Engine.Wiring.Joints;

/// <summary>Where a device, luminaire or piece of equipment meets a net.</summary>
/// <param name="Device">Index of the device; -1 for the equipment of the box.</param>
/// <param name="Name">Which screw or lead.</param>
/// <param name="Net">The net.</param>
/// <param name="Lead">Whether it comes as a wire lead that must be spliced, or as a screw that takes a conductor.</param>
public readonly record struct Terminal(int Device, TerminalName Name, Net Net, bool Lead);
