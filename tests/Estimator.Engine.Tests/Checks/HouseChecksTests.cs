using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Checks;

/// <summary>Each check has a house that passes and one that fails; articles as in NEC 2017 to 2023.</summary>
public sealed class HouseChecksTests
{
    [Theory]
    [InlineData(5, false)]
    [InlineData(3, true)]
    public void ReceptacleSpacing_By21052A_FindsTheGap(int receptacles, bool found) =>
        Assert.Equal(found, Has(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, receptacles)), "receptacle-spacing"));

    [Fact]
    public void ReceptacleSpacing_RaisedLocally_FindsMore()
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 5)) with
        {
            Code = new CodeBasis { Amendments = [new Amendment { Id = "a", Kind = AmendmentKind.Raise, Rule = "receptacle-spacing", Value = 96 }] },
        };
        Assert.True(Has(job, "receptacle-spacing"));
    }

    // An amendment that no check follows is said, not swallowed.
    [Theory]
    [InlineData(AmendmentKind.Raise, "receptacle-spacing", 96, false)]
    [InlineData(AmendmentKind.Relax, "arc-fault-protection", null, false)]
    [InlineData(AmendmentKind.Raise, "box-fill", 30, true)]
    [InlineData(AmendmentKind.Replace, "receptacle-spacing", null, true)]
    [InlineData(AmendmentKind.Raise, "arc-fault-protection", null, true)]
    public void Amendment_ThatNoCheckFollows_IsListedAsUnjudged(AmendmentKind kind, string rule, int? value, bool listed)
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 5)) with
        {
            Code = new CodeBasis { Amendments = [new Amendment { Id = "a", Kind = kind, Rule = rule, Value = value }] },
        };
        Assert.Equal(listed, SmallJobs.Estimate(job).Findings.Any(f => f.Code == "local-rule" && f.Where.Contains("a")));
    }

    [Theory]
    [InlineData(RoomKind.Bathroom, 0, true)]
    [InlineData(RoomKind.Bathroom, 1, false)]
    [InlineData(RoomKind.Hall, 0, true)]
    [InlineData(RoomKind.Laundry, 0, true)]
    [InlineData(RoomKind.Garage, 0, true)]
    [InlineData(RoomKind.Garage, 1, false)]
    [InlineData(RoomKind.Closet, 0, false)]
    [InlineData(RoomKind.Foyer, 0, true)]
    [InlineData(RoomKind.Foyer, 1, false)]
    public void RequiredReceptacle_ByRoom_IsFound(RoomKind kind, int receptacles, bool found) =>
        Assert.Equal(found, Has(SmallJobs.OneRoom(kind, (DeviceKind.DuplexReceptacle, receptacles)), "required-receptacle"));

    [Theory]
    [InlineData(0, true)]
    [InlineData(1, false)]
    public void LightingOutlet_By21070_NeedsASwitchedLight(int switches, bool found) =>
        Assert.Equal(found, Has(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.CeilingLight, 1), (DeviceKind.SinglePoleSwitch, switches)), "lighting-outlet"));

    // NEC 210.70(A)(2)(2): each entrance at grade has a light outside, with a wall switch.
    [Theory]
    [InlineData(OpeningKind.EntranceDoor, 0, true)]
    [InlineData(OpeningKind.EntranceDoor, 1, false)]
    [InlineData(OpeningKind.Door, 0, false)]
    [InlineData(OpeningKind.VehicleDoor, 0, false)]
    public void LightingOutlet_AtAnEntrance_StandsOutside(OpeningKind door, int lights, bool found)
    {
        var job = SmallJobs.OneRoom(RoomKind.Foyer, (DeviceKind.CeilingLight, 1), (DeviceKind.SinglePoleSwitch, 2))
            .With(r => r with { Counts = r.Counts.Add(new DeviceCount { Kind = DeviceKind.WallLight, Count = lights, Serves = ServedPlace.Outdoors }) });
        job = job with { Levels = [job.Levels[0] with { Openings = [job.Levels[0].Openings[0] with { Kind = door }] }] };
        Assert.Equal(found, SmallJobs.Estimate(job).Findings.Any(f => f.Article == "210.70(A)(2)(2)"));
    }

    // NEC 210.52(E)(3): a deck, porch or balcony that is reached from inside has a receptacle; from 2020 any that lies beside the dwelling.
    [Theory]
    [InlineData(CodeEdition.Nec2017, true, 0, true)]
    [InlineData(CodeEdition.Nec2017, true, 1, false)]
    [InlineData(CodeEdition.Nec2017, false, 0, false)]
    [InlineData(CodeEdition.Nec2020, false, 0, true)]
    [InlineData(CodeEdition.Nec2023, false, 1, false)]
    public void RequiredReceptacle_OfADeck_IsAskedForByEdition(CodeEdition edition, bool door, int receptacles, bool found)
    {
        var job = SmallJobs.OneRoom(RoomKind.Living);
        var deck = new Room
        {
            Id = "deck",
            Kind = RoomKind.Outdoors,
            Size = new RectangleSize(Length.FromFeet(16), Length.FromFeet(8)),
            At = new GridPoint(Length.Zero, Length.FromFeet(-8)),
            Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = receptacles }],
        };
        var opening = new Opening { Id = "D2", Kind = OpeningKind.SlidingDoor, Room = "R1", OtherRoom = "deck", Wall = new WallSpot(1, Length.FromFeet(8)), Width = Length.FromFeet(6) };
        job = job with { Code = new CodeBasis { Edition = edition }, Levels = [job.Levels[0] with { Rooms = [.. job.Levels[0].Rooms, deck], Openings = door ? [opening] : [] }] };
        Assert.Equal(found, SmallJobs.Estimate(job).Findings.Any(f => f.Article == "210.52(E)(3)"));
    }

    // NEC 210.52(G)(3): each unfinished portion of a basement, a utility room among them.
    [Theory]
    [InlineData(true, false, true)]
    [InlineData(true, true, false)]
    [InlineData(false, false, false)]
    public void RequiredReceptacle_OfAUtilityRoom_IsAskedForInAnUnfinishedBasement(bool basement, bool finished, bool found)
    {
        var job = SmallJobs.OneRoom(RoomKind.Utility).With(r => r with { Finished = finished });
        job = job with { Levels = [job.Levels[0] with { Basement = basement }] };
        Assert.Equal(found, Has(job, "required-receptacle"));
    }

    // What applies to nothing, wants for input, or is waived, is not said to be held.
    [Theory]
    [InlineData("receptacle-spacing", true)]
    [InlineData("counter-receptacles", false)]
    [InlineData("panel-tandems", false)]
    [InlineData("service-load", false)]
    [InlineData("arc-fault-protection", false)]
    [InlineData("box-fill", true)]
    public void Held_OfABedroom_ListsWhatWasJudgedThere(string rule, bool held)
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 5)) with
        {
            Code = new CodeBasis { Amendments = [new Amendment { Id = "a", Kind = AmendmentKind.Relax, Rule = "arc-fault-protection" }] },
        };
        var estimate = SmallJobs.Estimate(job);
        Assert.Equal(held, Engine.Checks.HeldRules.Of(estimate.AppliedRules, estimate.Findings).Any(r => r.Key == rule));
    }

    // What a house of many faults is found to lack stands in the list of what is judged, so that the page can say what was held.
    [Fact]
    public void Findings_OfManyHouses_AreOfRulesThatAreListed()
    {
        var judged = Engine.Rules.JudgedRules.All.Select(r => r.Key).ToHashSet();
        var mandatory = Enumerable.Range(0, 60).SelectMany(n => SmallJobs.Estimate(TestKit.Houses.HouseGen.Number(n)).Findings).Where(f => f.Severity is Severity.Mandatory && f.Article.Length > 0).Select(f => f.Code).ToHashSet();
        Assert.Subset(judged, mandatory);
        Assert.True(mandatory.Count > 5);
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(1, false)]
    public void SmokeAlarm_InABedroom_IsAskedFor(int alarms, bool found) => Assert.Equal(
        found, SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.SmokeAlarm, alarms))).Findings.Any(f => f.Code == "smoke-alarm" && f.Where.Contains("R1")));

    [Theory]
    [InlineData(19, 0, false)]
    [InlineData(20, 0, true)]
    [InlineData(20, 1, false)]
    public void PanelSpaces_WithExistingCircuits_CountTandems(int existing, int tandems, bool found)
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 2));
        job = job with
        {
            Panels = [job.Panels[0] with { TandemSpaces = tandems, Circuits = [.. Enumerable.Range(0, existing).Select(i => new ExistingCircuit { Id = $"e{i}", BreakerA = Current.FromAmperes(15) })] }],
        };
        Assert.Equal(found, Has(job, "panel-spaces"));
    }

    [Fact]
    public void PanelMake_NotStated_IsAskedFor()
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom);
        Assert.True(Has(job with { Panels = [job.Panels[0] with { Make = null }] }, "panel-make"));
        Assert.False(Has(job, "panel-make"));
    }

    [Fact]
    public void ServiceLoad_AboveTheRating_IsFound()
    {
        var small = SmallJobs.OneRoom(RoomKind.Utility);
        var idle = small with { Panels = [small.Panels[0] with { Existing = false }] };
        var job = idle with { Equipment = [new Equipment { Id = "e", Kind = EquipmentKind.ElectricHeat, Room = "R1", LoadVa = Power.FromVoltAmperes(60_000) }] };
        Assert.True(Has(job, "service-load"));
        Assert.False(Has(idle, "service-load"));
    }

    [Fact]
    public void Unjudged_Rules_AreListedAndLocalOnesToo()
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom) with { Code = new CodeBasis { Amendments = [new Amendment { Id = "x", Kind = AmendmentKind.Add, Rule = "local", Text = "Local." }] } };
        var findings = SmallJobs.Estimate(job).Findings;
        Assert.Contains(findings, f => f.Severity is Severity.Unjudged && f.Article == "314.20");
        Assert.Contains(findings, f => f.Code == "local-rule");
    }

    [Fact]
    public void Findings_Of2026_SayWhatWasNotVerified() => Assert.All(
        SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom) with { Code = new CodeBasis { Edition = CodeEdition.Nec2026 } }).Findings.Where(f => f.Severity is Severity.Mandatory && f.Edition == "NEC 2026"),
        f => Assert.False(f.Verified));

    private static bool Has(Job job, string code) => SmallJobs.Estimate(job).Findings.Any(f => f.Code == code);
}
