using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Takeoff;

/// <summary>What work on a service takes, by rating and edition.</summary>
public sealed class ServicePartsTests
{
    // NEC table 310.12 (2020) and table 250.66 with 250.66(A) and (B), device_rules.md section 10: rods never over 6, concrete never over 4.
    [Theory]
    [InlineData(100, ConductorMetal.Aluminium, "service-conductors-al-2", "electrode-conductor-8", "electrode-conductor-8", "meter-base-125")]
    [InlineData(200, ConductorMetal.Aluminium, "service-conductors-al-4_0", "electrode-conductor-6", "electrode-conductor-4", "meter-base-200")]
    [InlineData(200, ConductorMetal.Copper, "service-conductors-cu-2_0", "electrode-conductor-6", "electrode-conductor-4", "meter-base-200")]
    [InlineData(400, ConductorMetal.Copper, "service-conductors-cu-400", "electrode-conductor-6", "electrode-conductor-1_0", "meter-base-400")]
    public void Parts_OfARating_AreThoseOfTheTables(int rating, ConductorMetal metal, string conductors, string toRods, string toWater, string meter)
    {
        var items = Items(CodeEdition.Nec2017, new ServiceWork { RatingA = Current.FromAmperes(rating), Metal = metal, WaterPipe = true });
        Assert.Equal(25m, items[conductors]);
        Assert.True(items.ContainsKey(toRods) && items.ContainsKey(toWater) && items.ContainsKey(meter), string.Join(", ", items.Keys));
        Assert.Equal(toRods == toWater ? 45m : 25m, items[toRods]);
        Assert.Equal(2m, items["ground-rod"]);
    }

    // 250.66(B): a 400 A service in copper asks for 1/0 to a water pipe, and 4 to the concrete-encased electrode, beside which no rod is asked for, 250.53(A)(2).
    [Fact]
    public void ConcreteEncased_LargeService_NeverOverFour()
    {
        var items = Items(CodeEdition.Nec2020, new ServiceWork { RatingA = Current.FromAmperes(400), Metal = ConductorMetal.Copper, ConcreteEncased = true });
        Assert.Equal(15m, items["electrode-conductor-4"]);
        Assert.DoesNotContain("ground-rod", items.Keys);
    }

    // 230.85 (2020, 2023), 230.70(A)(1) (2026); 230.67 from 2020.
    [Theory]
    [InlineData(CodeEdition.Nec2017, null, false, false)]
    [InlineData(CodeEdition.Nec2020, "emergency-disconnect-200", true, false)]
    [InlineData(CodeEdition.Nec2023, "emergency-disconnect-200", true, false)]
    [InlineData(CodeEdition.Nec2026, "service-disconnect-200", true, true)]
    public void Disconnect_ByEdition_StandsWhereItSays(CodeEdition edition, string? disconnect, bool surge, bool fourWires)
    {
        var items = Items(edition, new ServiceWork { RatingA = Current.FromAmperes(200) });
        Assert.Equal(disconnect, items.Keys.SingleOrDefault(k => k.Contains("disconnect-2", StringComparison.Ordinal)));
        Assert.Equal(surge, items.ContainsKey("surge-protector"));
        Assert.Equal(fourWires, items.ContainsKey("panel-feed-al-4_0"));
        Assert.Equal(fourWires, items.ContainsKey("ground-bar"));
    }

    [Fact]
    public void Entrance_Underground_HasARiserAndNoMast()
    {
        var items = Items(CodeEdition.Nec2020, new ServiceWork { Entrance = ServiceEntrance.Underground, ConductorLength = Length.FromFeet(18), DisconnectToPanel = Length.Zero });
        Assert.Contains("service-riser", items.Keys);
        Assert.DoesNotContain("service-mast", items.Keys);
        Assert.Equal(18m, items["service-conductors-al-2"]);
    }

    [Theory]
    [InlineData(ServiceEntrance.Underground, 60)]
    [InlineData(ServiceEntrance.Overhead, 0)]
    public void Trench_OfAnUndergroundService_IsDugWhereTheJobSaysSo(ServiceEntrance entrance, int feet)
    {
        var items = Items(CodeEdition.Nec2020, new ServiceWork { Entrance = entrance, Trench = Length.FromFeet(60) });
        Assert.Equal(feet, items.GetValueOrDefault("trench"));
    }

    [Fact]
    public void Service_SaysThatItsConductorsStayLiveAndItsWaitCostsNoHours()
    {
        var (with, waiting) = (Estimate(CodeEdition.Nec2020, new ServiceWork { UtilityWaitDays = 0 }), Estimate(CodeEdition.Nec2020, new ServiceWork { UtilityWaitDays = 14 }));
        Assert.Contains(with.Findings, f => f.Code == "service-live" && f.Text.Contains("only the utility", StringComparison.Ordinal));
        Assert.Equal((0m, 14m), (with.Labor.WaitDays!.Value.Value, waiting.Labor.WaitDays!.Value.Value));
        Assert.Equal((with.Labor.Total.Value, with.Bid.Price.Value), (waiting.Labor.Total.Value, waiting.Bid.Price.Value));
        Assert.Contains(waiting.Bid.Inclusions, i => i.Contains("14 days", StringComparison.Ordinal));
    }

    [Fact]
    public void Service_EveryPart_IsInTheCatalogueWithHoursAndAPrice()
    {
        foreach (var edition in Enum.GetValues<CodeEdition>())
        {
            foreach (var (rating, metal) in new[] { 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400 }.SelectMany(r => new[] { (r, ConductorMetal.Copper), (r, ConductorMetal.Aluminium) }))
            {
                var estimate = Estimate(edition, new ServiceWork { RatingA = Current.FromAmperes(rating), Metal = metal, WaterPipe = true, ConcreteEncased = true, GroundRods = 2, Replaces = true, TemporaryPower = true });
                Assert.DoesNotContain(estimate.Findings, f => f.Code is "item-not-in-catalogue" or "no-price" or "service-too-large");
                Assert.All(estimate.Takeoff.Lines.Where(l => l.Where.Contains("service")), l => Assert.Contains(estimate.Labor.Lines, h => h.ItemId == l.ItemId && h.Hours.Value > 0));
            }
        }
    }

    [Fact]
    public void Service_BeyondTheTables_SaysSoAndCountsNothing()
    {
        var estimate = Estimate(CodeEdition.Nec2020, new ServiceWork { RatingA = Current.FromAmperes(600) });
        Assert.Contains(estimate.Findings, f => f.Code == "service-too-large");
        Assert.DoesNotContain(estimate.Takeoff.Lines, l => l.ItemId.StartsWith("meter-base", StringComparison.Ordinal));
    }

    private static Dictionary<string, decimal> Items(CodeEdition edition, ServiceWork service) =>
        Estimate(edition, service).Takeoff.Lines.Where(l => l.Where.Contains("service")).ToDictionary(l => l.ItemId, l => l.Quantity.Value);

    private static JobEstimate Estimate(CodeEdition edition, ServiceWork service)
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 2));
        return SmallJobs.Estimate(job with { Code = new CodeBasis { Edition = edition }, Service = service });
    }
}
