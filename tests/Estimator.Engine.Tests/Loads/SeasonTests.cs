using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Loads;

namespace Estimator.Engine.Tests.Loads;

/// <summary>Heat against cooling as two totals. 1500 sq ft, two small-appliance circuits and a laundry make 5100 VA after demand: NEC Annex D example D1(a).</summary>
public sealed class SeasonTests
{
    // 220.60, 430.24 by hand: 5100 + 9000 of heat = 14,100; 5100 + 6000 + 25% of 6000 = 12,600. From 2023 the smaller cooling counts at 125%: the same.
    [Theory]
    [InlineData(2017)]
    [InlineData(2020)]
    [InlineData(2023)]
    public void Standard_HeatTheLarger_HeatDecides(int year)
    {
        var sheet = Sheet(year, heat: [9000], cooling: [6000]);
        Assert.Equal((14_100m, 12_600m, 14_100m, true), (sheet["total_with_heat_va"].Value, sheet["total_with_cooling_va"].Value, sheet.TotalVa.Value, sheet.HeatUsed));
    }

    // 5100 + 8000 + 25% of 8000 = 15,100 is more than 5100 + 9000: the compressor decides although its nameplate is the smaller.
    [Theory]
    [InlineData(2017)]
    [InlineData(2023)]
    public void Standard_CoolingSmallerButAMotor_CoolingDecides(int year)
    {
        var sheet = Sheet(year, heat: [9000], cooling: [8000]);
        Assert.Equal((15_100m, false), (sheet.TotalVa.Value, sheet.HeatUsed));
    }

    // Two compressors of 4000 against 9000 of heat. 2017: 5100 + 8000 + 25% of one = 14,100. From 2023: 5100 + 125% of 8000 = 15,100, 220.60.
    [Theory]
    [InlineData(2017, 14_100)]
    [InlineData(2023, 15_100)]
    public void Standard_TwoCompressors_From2023BothAreRaised(int year, int cooling) => Assert.Equal(cooling, Sheet(year, heat: [9000], cooling: [4000, 4000])["total_with_cooling_va"].Value);

    // A larger motor that is no compressor is raised besides: 5100 + 4000 of its own + 8000 + 2000 (220.60) + 25% of 4000... here 9000 VA: 2250.
    [Fact]
    public void Standard_LargerMotorBesides_BothRulesHold()
    {
        var sheet = Sheet(2023, heat: [9500], cooling: [8000], motors: [9000]);
        Assert.Equal((2000m, 2250m), (sheet["cooling_raise_va"].Value, sheet["cooling_motor_va"].Value));
        Assert.Equal(2250m, sheet["heat_motor_va"].Value);
    }

    // 430.24: a quarter of a 940 VA disposer, 235 VA, with the disposer itself at its nameplate: 5100 + 940 + 235.
    [Fact]
    public void Standard_NeitherHeatNorCooling_LargestMotorCountsFurther() => Assert.Equal(6275m, Sheet(2020, motors: [940]).TotalVa.Value);

    // A heat pump runs with its supplementary heat, 220.82(C)(4): 6000 + 65% of 10,000 = 12,500; general 9000 VA is below 10 kVA.
    [Fact]
    public void Optional_HeatPumpWithStrips_CountsBothInWinter()
    {
        var sheet = new DwellingLoads(_page, Input(2020, [10_000], [6000], []) with { HeatPump = true }).Optional();
        Assert.Equal((21_500m, 15_000m), (sheet["total_with_heat_va"].Value, sheet["total_with_cooling_va"].Value));
    }

    [Fact]
    public void Sheets_Of2026_MarkWhatWasNotSeen()
    {
        var sheet = new DwellingLoads(_page, Input(2026, [], [5000], [])).Existing();
        Assert.False(sheet.Verified);
        Assert.Contains(sheet.Notes, n => n.Contains("not verified", StringComparison.Ordinal));
        Assert.Contains(sheet.Lines, l => l is { Id: "lighting_va", Article: "120.41", Verified: true });
        Assert.True(new DwellingLoads(_page, Input(2023, [], [5000], [])).Existing().Verified);
    }

    // load_calc.md, "Where each rule sits".
    [Theory]
    [InlineData(2017, "lighting_va", "220.12")]
    [InlineData(2020, "lighting_va", "220.14(J)")]
    [InlineData(2023, "lighting_va", "220.41")]
    [InlineData(2020, "after_demand_va", "220.42")]
    [InlineData(2023, "after_demand_va", "220.45")]
    [InlineData(2023, "evse_va", "220.57")]
    public void Line_OfAnEdition_NamesItsArticle(int year, string line, string article) => Assert.Equal(article, Sheet(year).Lines.First(l => l.Id == line).Article);

    private readonly PageWriter _page = new(1);

    private LoadWorksheet Sheet(int year, int[]? heat = null, int[]? cooling = null, int[]? motors = null) => new DwellingLoads(_page, Input(year, heat ?? [], cooling ?? [], motors ?? [])).Standard();

    private LoadInput Input(int year, int[] heat, int[] cooling, int[] motors)
    {
        ImmutableArray<Fact> Va(string name, int[] loads) => [.. loads.Select((v, i) => _page.Given($"$.{name}[{i}]", name, v, Unit.VoltAmperes))];
        return new LoadInput
        {
            Year = year,
            AreaSquareFeet = _page.Given("$.area", "area", 1500, Unit.SquareFeet),
            SmallApplianceCircuits = _page.Given("$.small", "small", 2, Unit.Each),
            LaundryCircuits = _page.Given("$.laundry", "laundry", 1, Unit.Each),
            Fastened = Va("motors", motors),
            Motors = Va("motors", motors),
            SpaceHeat = Va("heat", heat),
            Cooling = Va("cooling", cooling),
            Volts = _page.Given("$.volts", "volts", 240, Unit.Volts),
        };
    }
}
