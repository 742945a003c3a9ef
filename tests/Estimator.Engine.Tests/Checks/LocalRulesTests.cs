using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Rules;
using Estimator.TestKit;
using Estimator.TestKit.Editions;

namespace Estimator.Engine.Tests.Checks;

/// <summary>Each kind of local amendment on the rules that are judged.</summary>
public sealed class LocalRulesTests
{
    // The service of the room is 100 A, which NEC 230.79(C) takes.
    [Theory]
    [InlineData(AmendmentKind.Raise, 200, true)]
    [InlineData(AmendmentKind.Raise, 60, false)]
    [InlineData(AmendmentKind.Relax, 200, false)]
    [InlineData(AmendmentKind.Replace, 125, true)]
    public void Figure_OfAService_IsRaisedRelaxedOrReplaced(AmendmentKind kind, int amperes, bool found) =>
        Assert.Equal(found, Found(SmallJobs.OneRoom(RoomKind.Bedroom), "service-least", new Amendment { Id = "a", Kind = kind, Rule = "service-least", Value = amperes }));

    // A receptacle 25 in from a tub: 406.9(C) asks for 3 ft from 2020, and 2017 for none. A lower figure relaxes, a rule that the edition lacks can be added.
    [Theory]
    [InlineData(CodeEdition.Nec2023, AmendmentKind.Relax, 24, false)]
    [InlineData(CodeEdition.Nec2023, AmendmentKind.Raise, 24, true)]
    [InlineData(CodeEdition.Nec2023, AmendmentKind.Relax, null, false)]
    public void Zone_OfATub_FollowsTheLocalRule(CodeEdition edition, AmendmentKind kind, int? inches, bool found) =>
        Assert.Equal(found, Found(Situations.Of("tub_receptacle_25_in_from_edge", edition), "tub-zone", new Amendment { Id = "a", Kind = kind, Rule = "tub-zone", Value = inches }));

    [Theory]
    [InlineData(CodeEdition.Nec2017, "laundry_light_without_switch", "lighting-outlet", true)]
    [InlineData(CodeEdition.Nec2023, "wall_receptacle_20_in_below_counter", "below-counter", true)]
    [InlineData(CodeEdition.Nec2023, "alarm_4_ft_from_range", "alarm-near-cooking", true)]
    public void Rule_ThatTheEditionLacks_CanBeAdded(CodeEdition edition, string situation, string rule, bool found)
    {
        Assert.False(Found(Situations.Of(situation, edition), rule));
        Assert.Equal(found, Found(Situations.Of(situation, edition), rule, new Amendment { Id = "a", Kind = AmendmentKind.Add, Rule = rule }));
    }

    [Fact]
    public void Waiver_OfEachJudgedRule_IsFollowed() => Assert.All(JudgedRules.All, r => Assert.True(LocalRules.Judges(new Amendment { Id = "a", Kind = AmendmentKind.Relax, Rule = r.Key })));

    [Fact]
    public void Figures_OfTheTable_AllHaveTheEditionsOwn() => Assert.All(LocalRules.WithFigure, r => Assert.NotNull(LocalRules.FigureOf(r.Key)));

    [Theory]
    [InlineData(AmendmentKind.Add, "a rule of the town", null, false)]
    [InlineData(AmendmentKind.Replace, "box-fill", 3, false)]
    [InlineData(AmendmentKind.WiringMethod, "wiring-method", null, true)]
    [InlineData(AmendmentKind.Relax, "panel-place", null, true)]
    public void Follows_OfAnAmendment_IsToldInOnePlace(AmendmentKind kind, string rule, int? value, bool followed) =>
        Assert.Equal(followed, LocalRules.Follows(new Amendment { Id = "a", Kind = kind, Rule = rule, Value = value }));

    private static bool Found(Job job, string code, params Amendment[] amendments) =>
        SmallJobs.Estimate(job with { Code = job.Code with { Amendments = [.. amendments] } }).Findings.Any(f => f.Code == code && f.Severity is not Severity.Unjudged);
}
