using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Panels;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Loads;

/// <summary>The load of a subpanel is the load of what it feeds. The room of the job is 16 by 12 ft, 192 sq ft.</summary>
public sealed class FeederLoadTests
{
    // By hand, NEC 220 part III: 3 VA x 192 sq ft = 576 VA; a dryer of 5500 VA; an EV charger of 7200 VA. 13,276 VA / 240 V = 55.3 A.
    // 215.3: the charger runs for hours, 25% of 7200 more = 1800; 15,076 / 240 = 62.8 A.
    [Fact]
    public void Sheet_OfASubpanel_HoldsWhatHangsOnIt()
    {
        var sheet = Assert.Single(SmallJobs.Estimate(Job(100)).Loads.Feeders).Sheet;
        Assert.Equal(576m, sheet["lighting_va"].Value);
        Assert.Equal((13_276m, 55m), (sheet.TotalVa.Value, sheet.Amperes.Value));
        Assert.Equal(62.8m, decimal.Round(sheet["sizing_amperes"].Value, 1, MidpointRounding.AwayFromZero));
    }

    [Theory]
    [InlineData(60, true)]
    [InlineData(70, false)]
    public void Feeder_SmallerThanItsLoad_IsFound(int rating, bool found) =>
        Assert.Equal(found, SmallJobs.Estimate(Job(rating)).Findings.Any(f => f.Code == "feeder-load" && f.Severity is Severity.Mandatory));

    // 220.61(B): dryers at 70% on the neutral, 3850; the charger runs between the legs. 576 + 3850 = 4426 VA.
    [Fact]
    public void Neutral_OfTheFeeder_LeavesOutWhatRunsBetweenTheLegs() => Assert.Equal(4426m, SmallJobs.Estimate(Job(100)).Loads.Feeders[0].Sheet["neutral_total_va"].Value);

    [Fact]
    public void FeederBreaker_OfANewSubpanel_TakesTwoSpacesOfTheOther()
    {
        var schedule = SmallJobs.Estimate(Job(100)).Schedules["P1"];
        var feeder = Assert.Single(schedule.Breakers, b => b.Breaker.Origin is BreakerOrigin.Feeder);
        Assert.Equal((2, PanelLeg.Both, 13_276m), (feeder.Spaces.Length, feeder.Leg, feeder.Breaker.LoadVa.Value));
    }

    // The feeding panel stands far off in a corner, so that everything hangs on the subpanel.
    private static Job Job(int rating)
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 4));
        var room = job.Levels[0].Rooms[0];
        var far = room with { Id = "R2", Name = "Far", Kind = RoomKind.Garage, At = new GridPoint(Length.FromFeet(200), Length.Zero), Counts = [] };
        return job with
        {
            Levels = [job.Levels[0] with { Rooms = [room, far] }],
            Panels =
            [
                job.Panels[0] with { Room = "R2" },
                job.Panels[0] with { Id = "P2", FedFrom = "P1", RatingA = Current.FromAmperes(rating), Existing = false },
            ],
            Equipment =
            [
                new Equipment { Id = "dryer", Kind = EquipmentKind.Dryer, Room = "R1", LoadVa = Power.FromVoltAmperes(5500) },
                new Equipment { Id = "car", Kind = EquipmentKind.EvCharger, Room = "R1", LoadVa = Power.FromVoltAmperes(7200) },
            ],
        };
    }
}
