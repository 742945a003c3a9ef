using Estimator.Engine.Catalogue;
using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Learning;
using Estimator.Engine.Rules;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Learning;

public sealed class LearningTests
{
    private static readonly JobEstimate Estimate = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 6)));

    [Fact]
    public void Outcomes_SetHoursByPhaseAndMaterialByCategory()
    {
        var day = new DateOnly(2026, 3, 2);
        var lines = Estimate.Takeoff.Lines;
        var (cable, box) = (lines.First(l => l.Category == "cable"), lines.First(l => l.Category == "box"));
        var outcomes = JobOutcomes.Of(
            Estimate, [new ActualHours(1, day, WorkPhase.RoughIn, 3, ""), new ActualHours(2, day, WorkPhase.RoughIn, 2, ""), new ActualHours(3, day, WorkPhase.TrimOut, 1, "")],
            [new UsedMaterial(cable.ItemId, 200), new UsedMaterial(box.ItemId, 7), new UsedMaterial("breaker-2-50-plain", 1)]);
        Assert.Equal(
            [
                new JobOutcome(LearnedKind.Hours, "rough_in", Estimate.Labor.ByPhase[WorkPhase.RoughIn].Value, 5),
                new JobOutcome(LearnedKind.Hours, "trim_out", Estimate.Labor.ByPhase[WorkPhase.TrimOut].Value, 1),
                new JobOutcome(LearnedKind.Material, "box", box.Quantity.Value, 7),
                new JobOutcome(LearnedKind.Material, "cable", cable.Quantity.Value, 200),
            ],
            outcomes.Select(o => o with { Classes = [] }));

        // Cable and devices of the rough-in, together the hours of the phase; material has no classes.
        Assert.Equal(["cable", "device"], outcomes[0].Classes.Select(c => c.Class));
        Assert.Equal(outcomes[0].Estimated, outcomes[0].Classes.Sum(c => c.Hours));
        Assert.All(outcomes.Skip(2), o => Assert.True(o.Classes.IsEmpty));
    }

    [Fact]
    public void Proposals_OfOneJob_AreNone()
    {
        Assert.Empty(Proposals.Of([Closed("a", 1.3m)]));
        var proposal = Assert.Single(Proposals.Of([Closed("b", 1.3m), Closed("a", 1.3m)]));
        Assert.Equal((LearnedKind.Hours, "rough_in", 2), (proposal.Kind, proposal.Key, proposal.Pooled.Jobs));
        Assert.Equal(["a", "b"], proposal.Jobs);
        Assert.InRange(proposal.Pooled.Factor, 1.05m, 1.25m);
    }

    // Nothing is applied before acceptance; then the units of that phase alone, each saying from where, and its file reads the same again.
    [Fact]
    public void Over_AnAcceptedFactor_MultipliesItsPhaseAlone()
    {
        var own = new OwnUnit(LearnedKind.Hours, "rough_in", 1.25m, 4);
        Assert.Same(Catalogues.Shipped, OwnUnits.Over(Catalogues.Shipped, []));
        var learned = OwnUnits.Over(Catalogues.Shipped, [own]);
        Assert.NotEqual(Catalogues.Shipped.Hash, learned.Hash);
        var (before, after) = (Estimate, JobEstimate.Compute(Estimate.House.Job, learned));
        Assert.Equal(1.25, (double)(after.Labor.ByPhase[WorkPhase.RoughIn].Value / before.Labor.ByPhase[WorkPhase.RoughIn].Value), 0.01);
        Assert.Equal(before.Labor.ByPhase[WorkPhase.TrimOut].Value, after.Labor.ByPhase[WorkPhase.TrimOut].Value);
        Assert.All(after.Labor.Lines.Where(l => l.Phase is WorkPhase.RoughIn), l => Assert.StartsWith("own: 1.25 times the table from 4 closed jobs", l.Basis, StringComparison.Ordinal));

        var files = Catalogues.ShippedFiles.ToDictionary(f => f.Key, f => f.Key == "labor.csv" ? OwnUnits.LaborCsv(learned) : f.Value, StringComparer.Ordinal);
        Assert.Equal(learned.LaborUnits, PartsCatalogue.Read(files).Value.LaborUnits);
    }

    // A class stands in front of its phase and is never multiplied with it; the rest of the phase keeps the phase's.
    [Fact]
    public void Over_AClass_StandsInFrontOfItsPhase()
    {
        OwnUnit[] own = [new(LearnedKind.Hours, "rough_in", 1.25m, 4), new(LearnedKind.Hours, "rough_in/cable", 1.5m, 3)];
        var learned = OwnUnits.Over(Catalogues.Shipped, own);
        Assert.Equal(1.5m * Unit(Catalogues.Shipped, "nm_b-12-2"), Unit(learned, "nm_b-12-2"));
        Assert.Equal(decimal.Round(1.25m * Unit(Catalogues.Shipped, "receptacle-15"), 4, MidpointRounding.AwayFromZero), Unit(learned, "receptacle-15"));
        var alone = OwnUnits.Over(Catalogues.Shipped, own[1..]);
        Assert.Equal(Unit(learned, "nm_b-12-2"), Unit(alone, "nm_b-12-2"));
        Assert.Equal(Unit(Catalogues.Shipped, "receptacle-15"), Unit(alone, "receptacle-15"));
        Assert.Equal(
            alone.LaborUnits.Where(u => u.Basis.StartsWith("own: 1.50", StringComparison.Ordinal)), OwnUnits.Preview(Catalogues.Shipped, own[1]).Select(p => p.Own));

        static decimal Unit(PartsCatalogue catalogue, string item) => catalogue.LaborFor(item).Single(u => u.Phase is WorkPhase.RoughIn).Hours;
    }

    // Every category of the catalogue that has hours belongs to a class that the table names.
    [Fact]
    public void Class_OfEachCategoryWithHours_IsNamed()
    {
        var categories = Catalogues.Shipped.LaborUnits.Select(u => Catalogues.Shipped.Find(u.Item)!.Category).Distinct();
        Assert.All(categories, c => Assert.Contains(c, LearningRules.Class(LearningRules.ClassOf(c))!.Text("categories").Split(' ')));
        Assert.Equal("site", LearningRules.ClassOf("something new"));
    }

    [Theory]
    [InlineData(1.064, 6.4)]
    [InlineData(0.97, 0)]
    public void Over_Waste_IsTheCutToleranceOfANewJob(double factor, double percent)
    {
        var practice = OwnUnits.Over(new Practice(), [new OwnUnit(LearnedKind.Material, "cable", (decimal)factor, 3)]);
        Assert.Equal((decimal)percent, practice.CutTolerancePercent!.Value.ToHundredths());
        Assert.Null(OwnUnits.Over(new Practice(), [new OwnUnit(LearnedKind.Material, "box", 1.1m, 3)]).CutTolerancePercent);
    }

    // By hand: what the estimated labor cost less what the worked hours cost is what the job left more, or less.
    [Fact]
    public void Result_AtTheEstimatedHours_LeavesContingencyProfitAndRounding()
    {
        var page = new PageWriter(50);
        var result = JobResult.Of(page, Estimate, Estimate.Labor.Total, Nothing);
        var bid = Estimate.Bid;
        Assert.Equal(bid.Additions.Where(l => l.Id != "overhead").Sum(l => l.Amount.Value), result.Left.Value);
        var twice = JobResult.Of(page, Estimate, page.Given("$", "Hours", 2 * Estimate.Labor.Total.Value, Unit.Hours), Nothing);
        Assert.Equal(result.Left.Value - bid.DirectCost.Single(l => l.Id == "labor").Amount.Value, twice.Left.Value, 1);
    }

    // Used as taken off changes nothing; a tenth more of the cable costs a tenth of what its coils cost, and the tax on that, whatever is left over of the coil.
    [Fact]
    public void Result_OfMaterialUsed_CountsAtTheEstimatesPrices()
    {
        var page = new PageWriter(50);
        var (bid, cable) = (Estimate.Bid, Estimate.Purchase.Lines.First(l => l.ItemId.StartsWith("nm_b", StringComparison.Ordinal)));
        var plain = JobResult.Of(page, Estimate, Estimate.Labor.Total, Nothing);
        Assert.Null(plain.Material);
        var same = JobResult.Of(page, Estimate, Estimate.Labor.Total, Used(cable.Needed.Value));
        Assert.Equal((0m, plain.Left.Value), (same.Material!.Value.Value, same.Left.Value));
        var more = JobResult.Of(page, Estimate, Estimate.Labor.Total, Used(1.1m * cable.Needed.Value));
        var tax = bid.DirectCost.Single(l => l.Id == "material-tax").Amount.Value / bid.DirectCost.Single(l => l.Id == "material").Amount.Value;
        Assert.Equal(0.1m * cable.Cost!.Value.Value.ToDollars() * (1 + tax), more.Material!.Value.Value, 1);
        Assert.Equal(plain.Left.Value - more.Material.Value.Value, more.Left.Value);
        Assert.True(JobResult.Of(page, Estimate, Estimate.Labor.Total, Used(0.9m * cable.Needed.Value)).Left.Value > plain.Left.Value);

        Dictionary<string, Fact> Used(decimal feet) => new(StringComparer.Ordinal) { [cable.ItemId] = page.Given("$", "Used", feet, cable.Needed.Unit) };
    }

    private static IReadOnlyDictionary<string, Fact> Nothing { get; } = new Dictionary<string, Fact>(StringComparer.Ordinal);

    private static ClosedJob Closed(string id, decimal ratio) => new(id, id, new DateOnly(2026, 3, 2), [new JobOutcome(LearnedKind.Hours, "rough_in", 20, 20 * ratio)]);
}
