using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Layout;

/// <summary>How many vehicle bays a garage has: one for each vehicle door, or by its floor where none is drawn.</summary>
public static class VehicleBays
{
    /// <summary>The bays of a room.</summary>
    public static int Of(FramedHouse house, int room)
    {
        var doors = house.Openings.Count(o => o.Room == room && o.Source.Kind is OpeningKind.VehicleDoor);
        return doors > 0 ? doors : Math.Max(1, (int)decimal.Floor(house.Rooms[room].AreaSquareFeet.Value / ReceptacleRules.GarageBayArea.Number()));
    }
}
