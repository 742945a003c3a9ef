using Estimator.Engine.House;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Checks;

/// <summary>Receptacles outdoors stand in weatherproof boxes. Source: NEC 406.9(B).</summary>
public sealed class ReceptacleTypeTests
{
    [Theory]
    [InlineData(120, false)]
    [InlineData(240, true)]
    public void Box_OfEquipmentOutdoors_IsWeatherproofWhereOneIsMade(int volts, bool found)
    {
        var job = SmallJobs.OneRoom(RoomKind.Outdoors) with
        {
            Equipment = [new Equipment { Id = "pump", Kind = EquipmentKind.Other, Room = "R1", Volts = volts, Connection = Connection.Receptacle }],
        };
        var estimate = SmallJobs.Estimate(job);
        Assert.Equal(found, estimate.Findings.Any(f => f.Code == "wet-location"));
        Assert.Equal(!found, estimate.Takeoff.Lines.Any(l => l.ItemId == "cover-in-use"));
    }
}
