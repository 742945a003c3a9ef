using Estimator.Engine.Catalogue;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Purchase;

public sealed class StockTests
{
    private static readonly JobEstimate Job = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 6), (DeviceKind.SinglePoleSwitch, 1), (DeviceKind.CeilingLight, 1)));

    [Fact]
    public void Plan_ItemsOnTheShelf_BuysTheRestAlone()
    {
        var line = Plan(StockOnHand.Empty).Lines.First(l => l.Unit == "each" && l.Needed.Value > 2);
        var less = Plan(new StockOnHand([], [new StockCount(line.ItemId, line.Needed.Value - 1)])).Lines.Single(l => l.ItemId == line.ItemId);
        Assert.Equal(line.Needed.Value - 1, less.FromStock);
        Assert.Equal(PackChoice.Cheapest(1, [.. Catalogues.Shipped.OffersFor(line.ItemId)]), less.Packs);
        Assert.Empty(Plan(new StockOnHand([], [new StockCount(line.ItemId, 1000)])).Lines.Single(l => l.ItemId == line.ItemId).Packs);
    }

    [Fact]
    public void Surplus_OfAnOpenedPack_DoesNotGoBack()
    {
        var line = Job.Purchase.Lines.First(l => l.Unit == "each");
        PackCount Pack(int size, bool returnable) => new(new Offer("i", "s", size, Money.FromDollars(5), "") { Returnable = returnable }, 2);
        Assert.False((line with { Left = 9 }).GoesBack(Pack(10, true)));
        Assert.True((line with { Left = 10 }).GoesBack(Pack(10, true)));
        Assert.False((line with { Left = 10 }).GoesBack(Pack(10, false)));
        Assert.False((line with { Left = 10, Unit = "foot" }).GoesBack(Pack(10, true)));
    }

    [Fact]
    public void Plan_ReelOnTheShelf_IsCutBeforeCoilsAreBought()
    {
        var cut = Plan(StockOnHand.Empty).Cuts.MaxBy(c => c.Cost.ToDollars())!;
        var shelf = new StockPiece(cut.ItemId, "reel in the van", Length.FromFeet(1000));
        var with = Plan(new StockOnHand([shelf], []));
        var coil = with.Cuts.Single(c => c.ItemId == cut.ItemId).Coils.Single();
        Assert.Equal((shelf, (decimal?)0), (coil.Shelf, with.Lines.Single(l => l.ItemId == cut.ItemId).Cost?.Value.ToDollars()));
        Assert.Equal(cut.InPieces, coil.Length - coil.Left - coil.Trimmed);
    }

    // Three percent of the run, rounded up to the sixteenth, and an inch: common practice, no source.
    [Fact]
    public void Pieces_OfEachRun_CarryToleranceAndTrim() => Assert.All(Job.Takeoff.Pieces, p =>
    {
        var run = Job.Wiring.Runs.Single(r => r.Id == p.Run).Total.AsLength().Value;
        Assert.InRange(p.Length.AsLength().Value.ToInches() - (1.03m * run.ToInches()), 0, 0.0625m);
        Assert.Equal(1, p.Trim.AsLength().Value.ToInches());
    });

    [Fact]
    public void Pieces_PracticeOfTheJob_StandsInPlaceOfTheDefault()
    {
        var own = SmallJobs.Estimate(Job.House.Job with { Practice = new Practice { CutTolerancePercent = Percent.FromHundredths(0), CutTrim = Length.FromInches(3), UsefulEnd = Length.FromFeet(9) } });
        Assert.All(own.Takeoff.Pieces, p => Assert.Equal(3, p.Trim.AsLength().Value.ToInches()));
        Assert.All(own.Takeoff.Pieces.Zip(Job.Takeoff.Pieces), p => Assert.True(p.First.Length.Value < p.Second.Length.Value));
        Assert.All(own.Purchase.Cuts, c => Assert.Equal("9' 0\"", c.UsefulEnd.ToString()));
    }

    private static PurchasePlan Plan(StockOnHand stock) => Buying.For("job", Job.Takeoff, Catalogues.Shipped, stock);
}
