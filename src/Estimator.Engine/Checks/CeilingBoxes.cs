using Estimator.Engine.Catalogue;
using Estimator.Engine.Findings;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>Ceiling boxes from which a fan may hang are boxes for fans.</summary>
/// <remarks>Source: NEC 314.27(C), by edition.</remarks>
internal static class CeilingBoxes
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        if (context.Rule(FanBoxes.Key) is not { } rule)
        {
            return [];
        }

        return context.Boxes.Where(b => b.Place.Mount is Mount.Ceiling && b.Devices.Any(d => context.Layout.Devices[d].Kind is DeviceKind.CeilingLight or DeviceKind.CeilingFan)
                && FanBoxes.AskedFor(context.Job.Code, context.House.Rooms[b.Place.Room].Source.Kind))
            .SelectMany(b => context.Ask(
                rule, b.Use is BoxUse.Fan && b.Item is not null,
                () => $"The ceiling box of {context.Called(b)} is none that a fan may hang from. Take a box listed for fans.", [b.Id]));
    }
}
