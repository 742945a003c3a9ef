namespace Estimator.Engine.Takeoff;

/// <summary>A device or luminaire of the takeoff, with what its labor turns on.</summary>
/// <param name="ItemId">The item.</param>
/// <param name="Further">Whether another device stands before it in the same box.</param>
/// <param name="Place">Where it is set.</param>
/// <param name="CeilingFeet">Height of the ceiling it hangs on, in whole feet; 0 for a wall.</param>
/// <param name="OwnerSupplied">Whether the owner supplies it.</param>
public sealed record CountedDevice(string ItemId, bool Further, WorkPlace Place, int CeilingFeet, bool OwnerSupplied);
