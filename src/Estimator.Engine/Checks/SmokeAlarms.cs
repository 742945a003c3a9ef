using Estimator.Engine.Findings;
using Estimator.Engine.House;

namespace Estimator.Engine.Checks;

/// <summary>Each bedroom and each level with living space has a smoke alarm.</summary>
/// <remarks>Source: IRC R314.3, building code and not the NEC; the alarm outside each sleeping area is judged by level.</remarks>
internal static class SmokeAlarms
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        bool Has(int room) => context.Layout.Devices.Any(d => d.Place.Room == room && d.Kind is DeviceKind.SmokeAlarm or DeviceKind.SmokeCoAlarm && d.Place.Room == room);
        foreach (var room in context.Layout.House.Rooms.Where(r => r.Source.Kind is RoomKind.Bedroom && !Has(r.Index)))
        {
            yield return Missing(context, $"{context.RoomName(room.Index)} is a bedroom without a smoke alarm. Add one.", room.Source.Id);
        }

        foreach (var level in context.Layout.House.Levels)
        {
            var rooms = level.Rooms.Select(r => context.Layout.House.Rooms[r]).ToList();
            var lived = rooms.Any(r => r.Source.Kind is not (RoomKind.Attic or RoomKind.Crawl or RoomKind.Garage or RoomKind.Outdoors or RoomKind.Void));
            if (lived && !rooms.Any(r => r.Source.Kind is not RoomKind.Bedroom && Has(r.Index)))
            {
                yield return Missing(context, $"Level {level.Source.Called()} has no smoke alarm outside its bedrooms. Add one near them.", level.Source.Id);
            }
        }
    }

    private static Finding Missing(CheckContext context, string text, string where) => new()
    {
        Code = "smoke-alarm",
        Severity = Severity.Mandatory,
        Where = [where],
        Text = text,
        Article = "IRC R314.3",
        Edition = $"IRC paired with NEC {(int)context.Edition}",
    };
}
