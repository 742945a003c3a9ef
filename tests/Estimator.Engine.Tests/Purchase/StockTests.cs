using Estimator.Engine.House;
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

    private static PurchasePlan Plan(StockOnHand stock) => Buying.For("job", Job.Takeoff, Catalogues.Shipped, stock);
}
