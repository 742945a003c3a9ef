using Estimator.Engine.Catalogue;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Rules;
using Estimator.Engine.Wiring.Boxes;

namespace Estimator.Engine.Checks;

/// <summary>Receptacles are tamper resistant, and those outdoors stand in weatherproof boxes.</summary>
/// <remarks>Every receptacle that the estimate buys is tamper resistant, and outdoors weather resistant with an in-use cover. Source: NEC 406.12, 406.9(B).</remarks>
internal static class ReceptacleTypes
{
    internal static IEnumerable<Finding> Judge(CheckContext context) => Tamper(context).Concat(Wet(context));

    private static IEnumerable<Finding> Tamper(CheckContext context)
    {
        if (context.Rule("tamper-resistant") is not { } rule)
        {
            return [];
        }

        var below = PlacingLimits.TamperBelow.Inches().ToSixteenths();
        return context.Layout.Devices.Where(d => d.Kind.IsReceptacle() && d.Kind is not DeviceKind.Receptacle240V && d.Place.Height <= below).SelectMany(d => context.Ask(
            rule, !d.OwnerSupplied,
            () => $"The owner supplies {context.Called(d)}: it must be marked tamper resistant{(Outdoors(context, d.Place.Room) || d.Serves is ServedPlace.Outdoors ? " and weather resistant" : "")}.",
            [d.Id], Severity.Advice));
    }

    private static IEnumerable<Finding> Wet(CheckContext context)
    {
        if (context.Rule("wet-location") is not { } rule)
        {
            return [];
        }

        return context.Boxes.Where(b => IsReceptacle(context, b)).SelectMany(b => context.Ask(
            rule, b.Use is BoxUse.Weatherproof,
            () => $"The receptacle of {context.Called(b)} stands outdoors and its box is not weatherproof. Wire the equipment directly, or take a box and an in-use cover listed for it.", [b.Id]));
    }

    private static bool IsReceptacle(CheckContext context, Box box) => box.Equipment >= 0
        ? Outdoors(context, box.Place.Room) && context.Layout.Equipment[box.Equipment].Connection is Connection.Receptacle
        : box.Devices.Any(d => context.Layout.Devices[d] is var device && device.Kind.IsReceptacle() && (device.Serves is ServedPlace.Outdoors || Outdoors(context, device.Place.Room)));

    private static bool Outdoors(CheckContext context, int room) => context.House.Rooms[room].Source.Kind is RoomKind.Outdoors;
}
