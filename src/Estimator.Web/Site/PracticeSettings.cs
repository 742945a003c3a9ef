using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.Rules;
using Estimator.Web.Entries;
using Estimator.Web.Takeoff;

namespace Estimator.Web.Site;

/// <summary>The ways of working that can be stated, in the order in which a job meets them.</summary>
public static class PracticeSettings
{
    private const string NoSource = "common practice, no source";

    /// <summary>All of them.</summary>
    public static ImmutableArray<PracticeSetting> All { get; } =
    [
        PracticeSetting.OfLength(ReceptacleRules.WallBetween, p => p.ReceptacleSpacing, (p, x) => p with { ReceptacleSpacing = x }, "Wall receptacles apart at most; the code's own limit still holds"),
        PracticeSetting.OfLength(PracticeDefaults.ReceptacleHeight, p => p.ReceptacleHeight, (p, x) => p with { ReceptacleHeight = x }),
        PracticeSetting.OfLength(PracticeDefaults.SwitchHeight, p => p.SwitchHeight, (p, x) => p with { SwitchHeight = x }),
        PracticeSetting.OfCount(PracticeDefaults.OutletsPer20A, p => p.OutletsPer20A, (p, x) => p with { OutletsPer20A = x }),
        PracticeSetting.OfCount(PracticeDefaults.OutletsPer15A, p => p.OutletsPer15A, (p, x) => p with { OutletsPer15A = x }),
        PracticeSetting.OfChoice(
            "Lights and receptacles on one circuit", "apart: lights on 15 A", NoSource,
            [new("", "by default"), new(Option.Yes, "together on 20 A"), new(Option.No, "apart")],
            p => Option.Of(p.MixLightsAndReceptacles), (p, v) => p with { MixLightsAndReceptacles = Option.YesNoOf(v) }),
        PracticeSetting.OfChoice(
            "Ground-fault protection sits in", "whichever costs less", "planning costs of this job",
            Option.Of<GroundFaultBy>("by default", SiteWords.Of), p => p.GroundFaultBy?.ToString() ?? "", (p, v) => p with { GroundFaultBy = Option.Member<GroundFaultBy>(v) }),
        PracticeSetting.OfChoice(
            "A light with one switch is fed", "whichever costs less", "planning costs of this job",
            Option.Of<ControlFeed>("by default", SiteWords.Of), p => p.ControlFeed?.ToString() ?? "", (p, v) => p with { ControlFeed = Option.Member<ControlFeed>(v) }),
        PracticeSetting.OfChoice(
            "Circuits that share a neutral, two by two", SiteWords.Of(MultiwireUse.None), NoSource,
            Option.Of<MultiwireUse>("by default", SiteWords.Of), p => p.Multiwire?.ToString() ?? "", (p, v) => p with { Multiwire = Option.Member<MultiwireUse>(v) }),
        PracticeSetting.OfChoice(
            "Wiring method", SiteWords.Of(WiringMethod.NmB), NoSource,
            Option.Of<WiringMethod>("by default", SiteWords.Of), p => p.WiringMethod?.ToString() ?? "", (p, v) => p with { WiringMethod = Option.Member<WiringMethod>(v) }),
        PracticeSetting.OfLength(PracticeDefaults.BoxTail, p => p.BoxTail, (p, x) => p with { BoxTail = x }),
        PracticeSetting.OfLength(PracticeDefaults.PanelTail, p => p.PanelTail, (p, x) => p with { PanelTail = x }),
        PracticeSetting.OfPercent(PracticeDefaults.RunSlackPercent, p => p.RunSlackPercent, (p, x) => p with { RunSlackPercent = x }),
        PracticeSetting.OfPercent(PracticeDefaults.CutTolerancePercent, p => p.CutTolerancePercent, (p, x) => p with { CutTolerancePercent = x }),
        PracticeSetting.OfLength(PracticeDefaults.CutTrim, p => p.CutTrim, (p, x) => p with { CutTrim = x }),
        PracticeSetting.OfLength(PracticeDefaults.UsefulEnd, p => p.UsefulEnd, (p, x) => p with { UsefulEnd = x }),
        .. PracticeDefaults.SpareCategories.Select(c => PracticeSetting.OfSpare(c, $"{ItemCategory.Words(c)} bought beyond the takeoff", NoSource)),
        PracticeSetting.OfPercent(PracticeDefaults.BranchVoltageDropPercent, p => p.BranchVoltageDropPercent, (p, x) => p with { BranchVoltageDropPercent = x }),
        PracticeSetting.OfLength(PracticeDefaults.MaximumWallThickness, p => p.MaximumWallThickness, (p, x) => p with { MaximumWallThickness = x }),
        PracticeSetting.OfChoice(
            "House during the work", "empty", NoSource,
            [new(Option.No, "empty"), new(Option.Yes, "lived in and furnished")], p => Option.Of(p.Occupied), (p, v) => p with { Occupied = v == Option.Yes }),
        PracticeSetting.OfChoice(
            "Size of the job", "a day or more", NoSource,
            [new(Option.No, "a day or more"), new(Option.Yes, "less than a day")], p => Option.Of(p.SmallJob), (p, v) => p with { SmallJob = v == Option.Yes }),
        PracticeSetting.OfChoice(
            "Material for upper storeys", "not counted", NoSource,
            [new(Option.No, "not counted"), new(Option.Yes, "carried up")], p => Option.Of(p.CarriedUp), (p, v) => p with { CarriedUp = v == Option.Yes }),
        PracticeSetting.OfChoice(
            "Rooms that repeat another", "same hours", NoSource,
            [new(Option.No, "same hours"), new(Option.Yes, "go faster")], p => Option.Of(p.RepeatedRooms), (p, v) => p with { RepeatedRooms = v == Option.Yes }),
        PracticeSetting.OfChoice(
            "Hours of boring", "in those of the cable", NoSource,
            [new(Option.No, "in those of the cable"), new(Option.Yes, "apart from pulling")], p => Option.Of(p.BoresApart), (p, v) => p with { BoresApart = v == Option.Yes }),
    ];
}
