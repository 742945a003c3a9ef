using Estimator.Engine.Framing;
using Estimator.Engine.House;

namespace Estimator.Engine.Layout;

/// <summary>A device in its place.</summary>
/// <param name="Id">A placed device's own id; for a counted one room, kind and number: <c>R1/ceiling_light-1</c>.</param>
/// <param name="Kind">What.</param>
/// <param name="Serves">What it is there for.</param>
/// <param name="Place">Where.</param>
/// <param name="OwnerSupplied">Whether the owner supplies it.</param>
public sealed record LaidDevice(string Id, DeviceKind Kind, ServedPlace Serves, Placement Place, bool OwnerSupplied);
