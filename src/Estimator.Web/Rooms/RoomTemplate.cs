using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.Web.Rooms;

/// <summary>A room to start from. Its devices are the least that the edition asks for, and what such a room usually has besides.</summary>
/// <remarks>Sizes and extras: common practice, no source.</remarks>
/// <param name="Title">What the button says.</param>
/// <param name="Kind">Use of the room.</param>
/// <param name="Width">One side.</param>
/// <param name="Depth">The other side.</param>
/// <param name="Extras">Devices beyond the least.</param>
public sealed record RoomTemplate(string Title, RoomKind Kind, Length Width, Length Depth, ImmutableArray<DeviceCount> Extras)
{
    /// <summary>All templates.</summary>
    public static ImmutableArray<RoomTemplate> All { get; } =
    [
        new("Bedroom", RoomKind.Bedroom, Feet(11), Feet(13), []),
        new("Bath", RoomKind.Bathroom, Feet(8), Feet(10), [new DeviceCount { Kind = DeviceKind.ExhaustFan, Count = 1 }, new DeviceCount { Kind = DeviceKind.SinglePoleSwitch, Count = 1 }]),
        new("Kitchen", RoomKind.Kitchen, Feet(12), Feet(14), [new DeviceCount { Kind = DeviceKind.RecessedLight, Count = 6 }]),
        new("Family room", RoomKind.Family, Feet(15), Feet(21), [new DeviceCount { Kind = DeviceKind.RecessedLight, Count = 8 }]),
        new("Hall", RoomKind.Hall, Feet(4), Feet(12), []),
        new("Garage", RoomKind.Garage, Feet(22), Feet(22), []),
        new("Outdoors", RoomKind.Outdoors, Feet(10), Feet(12), [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 1, Serves = ServedPlace.Outdoors }, new DeviceCount { Kind = DeviceKind.WallLight, Count = 1 }]),
    ];

    private static Length Feet(int feet) => Length.FromFeet(feet);
}
