namespace Estimator.Engine.Controls;

/// <summary>A load under a control.</summary>
/// <param name="Device">Index of the device.</param>
/// <param name="Part">Which part of it.</param>
public readonly record struct ControlledLoad(int Device, LoadPart Part);
