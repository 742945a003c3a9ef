using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Checks;

/// <summary>An existing service passes only on what is known of the whole dwelling. The room of the job is 16 by 12 ft, 192 sq ft.</summary>
public sealed class ServiceRatingTests
{
    // NEC 220.87: 125% of the year's highest demand plus the new load. 3 VA x 192 sq ft = 576 VA; (1.25 x demand + 576) / 240 V on 100 A.
    [Theory]
    [InlineData(18_720, 100, false)]
    [InlineData(19_000, 101, true)]
    [InlineData(60_000, 315, true)]
    public void MeasuredDemand_WithTheNewLoad_DecidesTheService(int demandVa, int amperes, bool found)
    {
        var estimate = SmallJobs.Estimate(Job(p => p with { MeasuredDemandVa = Power.FromVoltAmperes(demandVa) }));
        Assert.Equal(amperes, Assert.Single(estimate.Loads.Sheets).Amperes.Value);
        Assert.Equal(found, estimate.Findings.Any(f => f.Code == "service-load" && f.Severity is Severity.Mandatory));
    }

    [Fact]
    public void MeasuredDemand_BesideALowerCalculation_StillDecides() => Assert.Contains(
        SmallJobs.Estimate(Job(p => p with { MeasuredDemandVa = Power.FromVoltAmperes(60_000), OtherAreaSqFt = Area.FromSquareFeet(500) })).Findings,
        f => f.Code == "service-load");

    // The example of load_calc_examples.csv, LC-17: 1800 sq ft, range, dryer, water heater and EV supply make 19,280 VA and 80.3 A by 220.83(A).
    [Fact]
    public void ExistingDwelling_WithItsRestStated_IsCalculatedWhole()
    {
        var sheet = SmallJobs.Estimate(Job(p => p with
        {
            OtherAreaSqFt = Area.FromSquareFeet(1800 - 192),
            Circuits = [Circuit("range", 9600), Circuit("dryer", 5000), Circuit("heater", 4500), Circuit("car", 7200)],
        })).Loads.Sheets.Single(s => s.Method == "existing");
        Assert.Equal((19_280m, 80.3m), (sheet.TotalVa.Value, decimal.Round(sheet.ExactAmperes.Value, 1, MidpointRounding.AwayFromZero)));
    }

    [Theory]
    [InlineData(null, true)]
    [InlineData(1608, false)]
    public void ExistingDwelling_WithoutItsRest_IsNotJudged(int? otherArea, bool unknown) =>
        Assert.Equal(unknown, Unjudged(p => p with { OtherAreaSqFt = otherArea is { } area ? Area.FromSquareFeet(area) : null }));

    [Fact]
    public void ExistingDwelling_WithATwoPoleCircuitOfUnknownLoad_IsNotJudged() => Assert.True(Unjudged(p => p with
    {
        OtherAreaSqFt = Area.FromSquareFeet(1608),
        Circuits = [new ExistingCircuit { Id = "range", BreakerA = Current.FromAmperes(50), Poles = 2 }],
    }));

    private static bool Unjudged(Func<Panel, Panel> change)
    {
        var findings = SmallJobs.Estimate(Job(change)).Findings;
        Assert.DoesNotContain(findings, f => f.Code == "service-load");
        return findings.Any(f => f.Code == "service-load-unknown" && f.Severity is Severity.Unjudged);
    }

    private static ExistingCircuit Circuit(string id, int loadVa) =>
        new() { Id = id, BreakerA = Current.FromAmperes(40), Poles = 2, LoadVa = Power.FromVoltAmperes(loadVa) };

    private static Job Job(Func<Panel, Panel> change)
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 4));
        return job with { Panels = [change(job.Panels[0])] };
    }
}
