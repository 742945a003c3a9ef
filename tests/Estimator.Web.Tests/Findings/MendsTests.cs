using Estimator.Engine.Edits;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.TestKit.Editions;
using Estimator.Web.Catalogues;
using Estimator.Web.Findings;
using Estimator.Web.Jobs;

namespace Estimator.Web.Tests.Findings;

public sealed class MendsTests
{
    public static TheoryData<string, string, DeviceKind> Removed => new()
    {
        { "two-storey-house", "required-receptacle", DeviceKind.DuplexReceptacle },
        { "two-storey-house", "smoke-alarm", DeviceKind.SmokeAlarm },
        { "two-storey-house", "lighting-outlet", DeviceKind.CeilingLight },
        { "two-storey-house", "entrance-light", DeviceKind.WallLight },
        { "basement-finish", "receptacle-spacing", DeviceKind.DuplexReceptacle },
    };

    // Every mandatory finding that offers a mend is gone, or smaller, once its mend is made often enough.
    [Theory]
    [MemberData(nameof(Removed))]
    public void For_FindingOfRemovedDevices_MendingEndsIt(string sample, string code, DeviceKind removed)
    {
        var job = JobStarts.Sample(sample);
        foreach (var room in RoomActs.All(job).ToList())
        {
            job = RoomActs.With(job, room.Id, r => r with { Counts = [.. r.Counts.Where(c => c.Kind != removed)] });
        }

        var finding = Findings(job).First(f => f.Code == code);
        var where = finding.Where[0];
        for (var step = 0; step < 40 && Findings(job).FirstOrDefault(f => f.Code == code && f.Where[0] == where) is { } still; step++)
        {
            var mend = Mends.For(still, job);
            Assert.NotNull(mend);
            job = mend.Change(job);
        }

        Assert.DoesNotContain(Findings(job), f => f.Code == code && f.Where[0] == where);
    }

    public static TheoryData<string, CodeEdition, string> Mended => new()
    {
        { "bath_receptacle_7_ft_from_basin", CodeEdition.Nec2023, "bath-receptacle" },
        { "island_bare", CodeEdition.Nec2023, "island-provision" },
        { "island_receptacle_8_in_below_top", CodeEdition.Nec2026, "below-counter" },
        { "counter_receptacle_30_in_above_top", CodeEdition.Nec2023, "counter-height" },
        { "house_with_front_receptacle", CodeEdition.Nec2020, "outdoor-receptacles" },
        { "furnace_without_receptacle", CodeEdition.Nec2023, "service-receptacle" },
        { "furnace_with_plain_receptacle", CodeEdition.Nec2020, "service-receptacle" },
        { "utility_dark", CodeEdition.Nec2017, "equipment-light" },
        { "switch_7_ft_high", CodeEdition.Nec2023, "switch-height" },
        { "stair_switched_below_alone", CodeEdition.Nec2023, "stair-control" },
        { "stair_with_one_dimmer", CodeEdition.Nec2023, "stair-dimmer" },
        { "small_appliance_circuit_with_a_light", CodeEdition.Nec2023, "circuit-other-outlets" },
        { "fastened_1500_va_beside_receptacles", CodeEdition.Nec2023, "permissible-loads" },
        { "furnace_on_shared_circuit", CodeEdition.Nec2023, "heating-circuit" },
        { "range_12_kw_on_30_a", CodeEdition.Nec2023, "range-circuit" },
        { "water_heater_4500_va_on_20_a", CodeEdition.Nec2023, "continuous-load" },
        { "water_heater_4500_va_on_40_a", CodeEdition.Nec2023, "appliance-device" },
        { "air_conditioner_on_50_a_marked_40", CodeEdition.Nec2023, "nameplate" },
        { "receptacle_of_the_owner", CodeEdition.Nec2023, "tamper-resistant" },
        { "garage_door_to_bedroom_floor", CodeEdition.Nec2023, "co-alarm" },
        { "air_conditioner_with_lock", CodeEdition.Nec2023, "ac-disconnect" },
        { "water_heater_without_disconnect", CodeEdition.Nec2023, "appliance-disconnect" },
        { "charger_without_disconnect", CodeEdition.Nec2026, "ev-disconnect" },
        { "service_cut_off_in_the_panel", CodeEdition.Nec2020, "emergency-disconnect" },
        { "service_with_emergency_disconnect", CodeEdition.Nec2026, "service-outdoors" },
        { "closet_light_20_in_from_wall", CodeEdition.Nec2023, "closet-light" },
        { "garage_apart_on_two_circuits", CodeEdition.Nec2023, "building-supply" },
        { "garage_apart_on_a_panel_of_20_a", CodeEdition.Nec2023, "building-rating" },
        { "shed_apart_without_receptacle", CodeEdition.Nec2023, "required-receptacle" },
        { "shed_apart_without_light", CodeEdition.Nec2023, "lighting-outlet" },
        { "guest_house_on_a_feeder", CodeEdition.Nec2023, "second-dwelling-disconnect" },
        { "boxes_with_4_in_of_cable", CodeEdition.Nec2023, "free-conductor" },
        { "tub_receptacle_over_it", CodeEdition.Nec2023, "tub-zone" },
        { "tub_receptacle_25_in_from_edge", CodeEdition.Nec2023, "tub-zone" },
        { "tub_switch_over_it", CodeEdition.Nec2023, "switch-at-tub" },
        { "alarm_4_ft_from_range", CodeEdition.Nec2020, "alarm-near-cooking" },
        { "kitchen_with_one_receptacle", CodeEdition.Nec2023, "required-circuits" },
        { "subpanel_400_ft_away", CodeEdition.Nec2023, "feeder-drop" },
        { "knob_and_tube", CodeEdition.Nec2023, "old-wiring" },
    };

    // One step mends it, the job is still one, and one step back is the job that was.
    [Theory]
    [MemberData(nameof(Mended))]
    public void For_FindingOfASituation_IsMendedInOneStepAndUndoneInOne(string situation, CodeEdition edition, string code)
    {
        var job = Situations.Of(situation, edition);
        var mend = Mends.For(Findings(job).First(f => f.Code == code && f.Severity is not Severity.Note), job);
        Assert.NotNull(mend);

        var edit = JobEditing.Between(job, mend.Change(job), "e", mend.Title);
        var mended = JobEditing.Apply(job, edit).Job;
        Assert.Empty(JobFile.Read(JobFile.Write(mended), "mended").Problems);
        Assert.DoesNotContain(Findings(mended), f => f.Code == code && f.Severity is not Severity.Note);
        Assert.Equal(JobFile.Write(job), JobFile.Write(JobEditing.Apply(mended, JobEditing.Inverse(edit)).Job));
    }

    [Fact]
    public void For_LaundryPinnedTo15Amperes_SizesTheBreaker()
    {
        var job = Situations.Of("furnace_with_gfci_receptacle", CodeEdition.Nec2023) is var utility ? utility with
        {
            Equipment = [],
            Levels = [utility.Levels[0] with { Rooms = [utility.Levels[0].Rooms[0] with { Kind = RoomKind.Laundry, Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 1 }] }] }],
            Pins = new Pins { Circuits = [new PinnedCircuit { Id = "laundry", Panel = "P1", BreakerA = Engine.Measures.Current.FromAmperes(15), Outlets = ["R1/duplex_receptacle-1"] }] },
        } : utility;

        var mended = Mends.For(Findings(job).First(f => f.Code == "required-circuits"), job)!.Change(job);

        Assert.DoesNotContain(Findings(mended), f => f.Code == "required-circuits");
    }

    [Fact]
    public void For_FeederThatCarriesTooLittle_TakesALargerOne()
    {
        var job = Situations.Of("subpanel_30_ft_away", CodeEdition.Nec2023) is var near ? near with { Equipment = [near.Equipment[0] with { LoadVa = Engine.Measures.Power.FromVoltAmperes(19_200) }] } : near;

        var mended = Mends.For(Findings(job).First(f => f.Code == "feeder-load"), job)!.Change(job);

        Assert.DoesNotContain(Findings(mended), f => f.Code == "feeder-load");
    }

    // 30 by 30 ft are 2700 VA of lights and receptacles by area, and one circuit of 20 A carries 2400, NEC 210.11(A).
    [Fact]
    public void For_FloorThatOneCircuitCannotCarry_PutsFewerOutletsOnEach()
    {
        var side = Engine.Measures.Length.FromFeet(30);
        var job = Situations.Of("bedroom_dark", CodeEdition.Nec2023) is var dark ? dark with
        {
            Levels = [dark.Levels[0] with { Rooms = [dark.Levels[0].Rooms[0] with { Kind = RoomKind.Family, Size = new RectangleSize(side, side), Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 2 }] }] }],
        } : dark;

        var mended = Mends.For(Findings(job).First(f => f.Code == "general-circuits"), job)!.Change(job);

        Assert.DoesNotContain(Findings(mended), f => f.Code == "general-circuits");
    }

    [Fact]
    public void For_BoxThatIsTooFull_FindsAnotherWayForSome()
    {
        var full = Enumerable.Range(0, 400).Select(Estimator.TestKit.Houses.HouseGen.Number).Select(j => (Job: j, Finding: Findings(j).FirstOrDefault(f => f.Code == "box-fill"))).Where(x => x.Finding is not null).ToList();
        Assert.NotEmpty(full);

        var mended = full.Count(x => Mends.For(x.Finding!, x.Job)!.Change(x.Job) is var job && !Findings(job).Any(f => f.Code == "box-fill" && f.Where.SequenceEqual(x.Finding!.Where)));

        Assert.True(mended > 0, $"{full.Count} boxes, {mended} mended");
    }

    [Fact]
    public void For_ServiceThatCarriesTooLittle_TakesALargerOne()
    {
        var job = Situations.Of("new_panel_of_an_unstated_service", CodeEdition.Nec2017);
        job = job with { Equipment = [.. Enumerable.Range(1, 4).Select(i => new Equipment { Id = $"E{i}", Kind = EquipmentKind.EvCharger, Room = "R1", LoadVa = Engine.Measures.Power.FromVoltAmperes(19_200) })] };

        var mended = Mends.For(Findings(job).First(f => f.Code == "service-load"), job)!.Change(job);

        Assert.True(mended.Panels[0].RatingA > job.Panels[0].RatingA);
        Assert.DoesNotContain(Findings(mended), f => f.Code == "service-load");
    }

    [Theory]
    [InlineData(CodeEdition.Nec2023, "emergency-disconnect")]
    [InlineData(CodeEdition.Nec2026, "service-outdoors")]
    public void For_NewPanelOfAnUnstatedService_StatesTheWork(CodeEdition edition, string code)
    {
        var job = Situations.Of("new_panel_of_an_unstated_service", edition);

        var mended = Mends.For(Findings(job).First(f => f.Code == code), job)!.Change(job);

        Assert.DoesNotContain(Findings(mended), f => f.Code == code);
    }

    [Fact]
    public void For_ServiceOf60Amperes_TakesTheLeastSize()
    {
        var job = Situations.Of("new_panel_of_an_unstated_service", CodeEdition.Nec2017) is var made ? made with { Panels = [made.Panels[0] with { RatingA = Engine.Measures.Current.FromAmperes(60) }] } : made;

        var mended = Mends.For(Findings(job).First(f => f.Code == "service-least"), job)!.Change(job);

        Assert.Equal(100m, mended.Panels[0].RatingA.ToAmperes());
    }

    [Theory]
    [InlineData("panel_in_closet", "panel-place")]
    [InlineData("panel_in_bathroom", "panel-place")]
    [InlineData("panel_in_passage_of_30_in", "working-space")]
    public void For_PanelThatHangsBadly_HangsItInAUtilityRoom(string situation, string code)
    {
        var utility = new Room { Id = "U", Kind = RoomKind.Utility, Size = new RectangleSize(Engine.Measures.Length.FromFeet(8), Engine.Measures.Length.FromFeet(8)), At = new GridPoint(Engine.Measures.Length.FromFeet(30), Engine.Measures.Length.Zero) };
        var job = Situations.Of(situation, CodeEdition.Nec2023);
        job = job with { Levels = [job.Levels[0] with { Rooms = job.Levels[0].Rooms.Add(utility) }] };

        var mended = Mends.For(Findings(job).First(f => f.Code == code), job)!.Change(job);

        Assert.NotEqual(job.Panels[0], mended.Panels[0]);
        Assert.DoesNotContain(Findings(mended), f => f.Code is "panel-place" or "working-space");
    }

    private static System.Collections.Immutable.ImmutableArray<Finding> Findings(Job job) => Engine.JobEstimate.Compute(job, CatalogueShelf.BuiltIn().Parts, Engine.Wiring.SearchDepth.Quick).Findings;
}
