using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Labor;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Labor;

public sealed class CrewRateTests
{
    // By hand, as in the bid: (30.38 + 20.51) / 2 = 25.445; with 43% 36.38635; over 85% 42.80747.
    [Fact]
    public void HourCost_OfNothingStated_IsElectricianAndHelper()
    {
        var crew = Crew(new BidSettings());
        Assert.Equal((42.81m, 2m, 85m), (crew.HourCost.Value, crew.Hands.Value, crew.ProductivePercent!.Value.Value));
        Assert.Null(crew.DriveHours);
        Assert.Equal(34m / 0.85m, Paid(crew), 10);
    }

    // By hand: lead 45, two electricians 40, three helpers 20: (45 + 80 + 60) / 6 = 30.8333; no burden, all paid hours productive.
    [Fact]
    public void HourCost_OfAStatedMix_IsTheAverageOfItsHands()
    {
        var bid = Plain with { Crew = new CrewMix { Leads = 1, Electricians = 2, Helpers = 3, LeadWage = Money.FromDollars(45) } };
        Assert.Equal((30.83m, 6m), (Crew(bid).HourCost.Value, Crew(bid).Hands.Value));
    }

    // A lead earns a tenth more than the electrician (common practice, no source): 44; alone he is the crew.
    [Fact]
    public void HourCost_OfALeadWithoutAWage_IsATenthAboveTheElectricians()
    {
        var bid = Plain with { Crew = new CrewMix { Leads = 1, Helpers = 0 } };
        Assert.Equal((44m, 1m), (Crew(bid).HourCost.Value, Crew(bid).Hands.Value));
    }

    // 29 U.S.C. 207(a)(1): one and a half times the wage beyond 40 hours. A week of 50 hours pays 55 hours' wages: 30 * 55 / 50 = 33 an hour, ten hours a day.
    [Fact]
    public void HourCost_WithOvertime_SpreadsThePremiumOverTheWeek()
    {
        var bid = Plain with { Crew = new CrewMix { OvertimeHoursAWeek = 10 } };
        Assert.Equal((33m, 10m), (Crew(bid).HourCost.Value, CrewRate.HoursADay(bid, new PageWriter(0)).Value));
    }

    // 34 hours by two hands of 8 hours are 2.125 days, three trips of half an hour each, two hands: 3 hours.
    [Fact]
    public void Driving_AsHours_TakesNoProductiveShare()
    {
        var bid = Plain with { Travel = TravelBy.Hours, ProductivePercent = Percent.FromHundredths(50), Drive = new DriveTime { HoursATrip = 0.5m } };
        var crew = Crew(bid);
        Assert.Equal((30m, 3m, 37m), (crew.HourCost.Value, crew.DriveHours!.Value.Value, Paid(crew)));
        Assert.Equal(4m, Crew(bid with { Drive = bid.Drive! with { Trips = 4 } }).DriveHours!.Value.Value);
    }

    [Fact]
    public void Driving_InTheShare_HasNoHoursAndNoLine()
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 6));
        var share = SmallJobs.Estimate(job with { Bid = Plain with { Travel = TravelBy.ProductiveShare, Drive = new DriveTime { HoursATrip = 5, Trips = 5 } } }).Bid;
        var hours = SmallJobs.Estimate(job with { Bid = Plain with { Travel = TravelBy.Hours, Drive = new DriveTime { HoursATrip = 5, Trips = 5 } } });
        Assert.DoesNotContain(share.DirectCost, l => l.Id == "driving");
        Assert.Equal(50m * 30m, hours.Bid.DirectCost.Single(l => l.Id == "driving").Amount.Value);
        Assert.Empty(ExplanationCheck.Problems(hours.Book));
    }

    // "Take it either as this share or as hours for drive and mobilisation, never both": common practice, no source. Two phases of 1.25 h by the labor table.
    [Theory]
    [InlineData(null, 0)]
    [InlineData(TravelBy.ProductiveShare, 0)]
    [InlineData(TravelBy.Hours, 2.5)]
    public void SettingUp_HasHoursOnlyBesideDrivingAsHours(TravelBy? travel, double hours)
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 6));
        var estimate = SmallJobs.Estimate(job with { Bid = Plain with { Travel = travel } });
        Assert.Equal((decimal)hours, estimate.Labor.Lines.Where(l => l.ItemId == "mobilization").Sum(l => l.Hours.Value));
        Assert.Equal(travel is not TravelBy.Hours, estimate.Bid.Crew.ProductivePercent is not null);
    }

    [Theory]
    [InlineData(2, 2, 1, false)]
    [InlineData(2, 3, 1, true)]
    [InlineData(1, 3, 3, false)]
    public void Apprentices_AboveTheStatedLimit_AreFound(int electricians, int helpers, int limit, bool found)
    {
        var bid = Plain with { Crew = new CrewMix { Electricians = electricians, Helpers = helpers, HelpersLimit = limit } };
        Assert.Equal(found, CrewChecks.Of(bid).Any(f => f.Code == "apprentice-ratio"));
    }

    [Fact]
    public void Apprentices_WithoutALimit_AreNotJudged() => Assert.Empty(CrewChecks.Of(Plain with { Crew = new CrewMix { Electricians = 1, Helpers = 9 } }));

    private static BidSettings Plain => new()
    {
        ElectricianWage = Money.FromDollars(40),
        HelperWage = Money.FromDollars(20),
        BurdenPercent = Percent.FromHundredths(0),
        ProductivePercent = Percent.FromHundredths(100),
    };

    private static decimal Paid(CrewRate crew)
    {
        var page = new PageWriter(1);
        return crew.PaidHours(page.Given("$.hours", "Hours", 34, Unit.Hours), page).Value;
    }

    private static CrewRate Crew(BidSettings bid)
    {
        var page = new PageWriter(0);
        return CrewRate.Of(bid, page.Given("$.hours", "Hours", 34, Unit.Hours), page);
    }
}
