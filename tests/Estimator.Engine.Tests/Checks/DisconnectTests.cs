using Estimator.Engine.Catalogue;
using Estimator.Engine.House;
using Estimator.TestKit;
using Estimator.TestKit.Editions;

namespace Estimator.Engine.Tests.Checks;

/// <summary>What a stated disconnect, an edition's surge protector and its fan boxes put on the list of parts.</summary>
public sealed class DisconnectTests
{
    [Theory]
    [InlineData("air_conditioner_with_disconnect", "equipment-disconnect", true)]
    [InlineData("air_conditioner_with_lock", "equipment-disconnect", false)]
    public void Disconnect_ThatIsStated_IsCounted(string situation, string item, bool counted)
    {
        var lines = SmallJobs.Estimate(Situations.Of(situation, CodeEdition.Nec2023)).Takeoff.Lines;
        Assert.Equal(counted, lines.Any(l => l.ItemId == item && l.Quantity.Value == 1));
    }

    // NEC 230.67 is new in 2020; a local rule may ask for it in 2017, and then the check says that it is not in the price.
    [Theory]
    [InlineData(CodeEdition.Nec2017, false, false, false)]
    [InlineData(CodeEdition.Nec2017, true, false, true)]
    [InlineData(CodeEdition.Nec2020, false, true, false)]
    public void Surge_OfANewService_IsCountedFrom2020(CodeEdition edition, bool added, bool counted, bool found)
    {
        var job = Situations.Of("service_as_the_edition_has_it", edition);
        job = job with { Code = job.Code with { Amendments = added ? [new Amendment { Id = "a", Kind = AmendmentKind.Add, Rule = "surge-protection" }] : [] } };
        var estimate = SmallJobs.Estimate(job);
        Assert.Equal((counted, found), (estimate.Takeoff.Lines.Any(l => l.ItemId == "surge-protector"), estimate.Findings.Any(f => f.Code == "surge-protection")));
    }

    // NEC 314.27(C) from 2020: a ceiling box of a habitable room where a fan could hang is a fan box; a hall is not habitable.
    [Theory]
    [InlineData(CodeEdition.Nec2017, RoomKind.Bedroom, BoxUse.Luminaire)]
    [InlineData(CodeEdition.Nec2020, RoomKind.Bedroom, BoxUse.Fan)]
    [InlineData(CodeEdition.Nec2023, RoomKind.Hall, BoxUse.Luminaire)]
    public void Box_OfACeilingLight_IsAFanBoxByEdition(CodeEdition edition, RoomKind kind, BoxUse use)
    {
        var job = Situations.Of("ceiling_light_in_bedroom", edition).With(r => r with { Kind = kind });
        Assert.Equal(use, SmallJobs.Estimate(job).Wiring.Boxes.Single(b => b.Id == "R1/ceiling_light-1").Use);
    }
}
