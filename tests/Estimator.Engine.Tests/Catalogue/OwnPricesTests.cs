using Estimator.Engine.Catalogue;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Catalogue;

/// <summary>A firm's own prices stand in place of samples.</summary>
public sealed class OwnPricesTests
{
    private const string Cable = "nm_b-12-2";

    private static Offer Own(string item, string supplier = "counter", int pack = 250, decimal dollars = 99m) =>
        new(item, supplier, pack, Money.FromDollars(dollars), "receipt");

    [Fact]
    public void OwnPrice_OfAnItem_TakesThePlaceOfItsSamples() =>
        Assert.Equal([Own(Cable)], Catalogues.Shipped.WithPrices([Own(Cable)]).OffersFor(Cable));

    [Fact]
    public void OwnPrice_OfAnItem_LeavesOthersAlone() =>
        Assert.Equal(Catalogues.Shipped.OffersFor("nm_b-14-2"), Catalogues.Shipped.WithPrices([Own(Cable)]).OffersFor("nm_b-14-2"));

    [Fact]
    public void OwnPrice_GivenAgain_Replaces()
    {
        var catalogue = Catalogues.Shipped.WithPrices([Own(Cable), Own(Cable, pack: 1000, dollars: 300m)]).WithPrices([Own(Cable, dollars: 120m)]);
        Assert.Equal([300m, 120m], catalogue.OffersFor(Cable).Select(o => o.Price.ToDollars()));
    }

    [Fact]
    public void OwnPrice_OfAnUnknownItem_ChangesNothing() =>
        Assert.Same(Catalogues.Shipped, Catalogues.Shipped.WithPrices([Own("no-such-item")]));

    [Fact]
    public void OwnPrices_InAnyOrder_GiveOneHashOfTheirOwn()
    {
        Offer[] own = [Own(Cable), Own("nm_b-14-2")];
        Assert.Equal(Catalogues.Shipped.WithPrices(own).Hash, Catalogues.Shipped.WithPrices(own.Reverse()).Hash);
        Assert.NotEqual(Catalogues.Shipped.Hash, Catalogues.Shipped.WithPrices(own).Hash);
    }

    // Wiring is optimised on planning costs: a new price changes what is bought, never a run.
    [Fact]
    public void OwnPrice_OfCable_MovesNoRun()
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 6), (DeviceKind.CeilingLight, 1), (DeviceKind.SinglePoleSwitch, 1));
        var (before, after) = (SmallJobs.Estimate(job), JobEstimate.Compute(job, Catalogues.Shipped.WithPrices([Own(Cable, dollars: 900m)])));
        Assert.Equal(before.Wiring.Runs.Select(r => (r.Id, r.Total.Value)), after.Wiring.Runs.Select(r => (r.Id, r.Total.Value)));
        Assert.True(after.Bid.Price.Value > before.Bid.Price.Value);
    }
}
