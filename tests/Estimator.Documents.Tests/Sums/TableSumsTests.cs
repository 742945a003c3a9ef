using Estimator.Documents.Orders;
using Estimator.Documents.Tables;
using Estimator.Documents.Tests.Orders;
using Estimator.Engine;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Documents.Tests.Sums;

/// <summary>The CSV tables of random bids and houses, read back: rows add up to what they give as a total.</summary>
public sealed class TableSumsTests
{
    private static readonly Lazy<List<JobEstimate>> Houses = new(() => [.. Enumerable.Range(0, 8).Select(n => SmallJobs.Estimate(HouseGen.Number(n)))]);
    private static readonly Lazy<List<JobEstimate>> Bids = new(() => [.. RecalculatedBooks.Seeds.Select(RecalculatedBooks.RandomBid)]);

    [Fact]
    [AddsUp("JobTable.Bid")]
    public void Bid_OfRandomBids_AddsUpToThePrice()
    {
        foreach (var rows in Bids.Value.Select(e => CsvTable.Read(e, JobTable.Bid)))
        {
            Assert.Equal(BookCells.Number(rows.Single(r => r["line"] == "price")["amount"]), rows.Where(r => r["part"] is "direct_cost" or "addition").Sum("amount"));
        }
    }

    [Fact]
    [AddsUp("JobTable.ScheduleOfValues")]
    public void ScheduleOfValues_OfRandomBids_AddsUpToThePrice()
    {
        foreach (var estimate in Bids.Value)
        {
            var rows = CsvTable.Read(estimate, JobTable.ScheduleOfValues);
            Assert.Equal(BookCells.Number(rows.Single(r => r["line"] == "total")["value_dollars"]), rows.Where(r => r["line"] != "total").Sum("value_dollars"));
            Assert.Equal(estimate.Bid.Price.Value, rows.Where(r => r["line"] != "total").Sum("value_dollars"));
        }
    }

    [Fact]
    [AddsUp("JobTable.PanelSchedule")]
    public void PanelSchedule_OfRandomHouses_SpacesAddUpToTheLegs()
    {
        foreach (var panel in Houses.Value.SelectMany(e => CsvTable.Read(e, JobTable.PanelSchedule).GroupBy(r => r["panel"])))
        {
            foreach (var row in panel.Where(r => r["leg_a_va"].Length > 0))
            {
                Assert.Equal(BookCells.Number(row["leg_a_va"]), panel.Where(r => r["leg"] == "A").Sum("load_va"));
                Assert.Equal(BookCells.Number(row["leg_b_va"]), panel.Where(r => r["leg"] == "B").Sum("load_va"));
            }
        }
    }

    [Fact]
    [AddsUp("JobTable.Purchase")]
    public void Purchase_OfRandomHouses_EachRowIsPacksTimesPrice()
    {
        foreach (var estimate in Houses.Value)
        {
            var rows = CsvTable.Read(estimate, JobTable.Purchase).Where(r => r["packs"].Length > 0).ToList();
            Assert.All(rows, r => Assert.Equal(BookCells.Number(r["packs"]) * BookCells.Number(r["pack_price_usd"]), BookCells.Number(r["cost_usd"])));
            Assert.Equal(estimate.Purchase.Total.Value, rows.Sum(r => decimal.Round(BookCells.Number(r["cost_usd"]), 2, MidpointRounding.AwayFromZero)));
        }
    }

    [Fact]
    [AddsUp("JobTable.LeftOver")]
    public void LeftOver_OfRandomHouses_EachRowIsHadLessNeeded()
    {
        const decimal Near = 0.0001m;
        Assert.All(Houses.Value.SelectMany(e => CsvTable.Read(e, JobTable.LeftOver)), r => Assert.InRange(BookCells.Number(r["had"]) - BookCells.Number(r["needed"]) - BookCells.Number(r["left"]), -Near, Near));
    }

    [Fact]
    [AddsUp("PurchaseOrderTable")]
    public void OrderTable_OfRandomOrders_AddsUpToTheGoods()
    {
        foreach (var order in SampleOrders.Seeds.Select(SampleOrders.Random))
        {
            var rows = CsvTable.Read(PurchaseOrderTable.Write(order));
            Assert.Equal(order.Order.Goods.ToDollars(), rows.Sum("cost_usd"));
            Assert.All(rows, r => Assert.True(BookCells.Number(r["received"]) + BookCells.Number(r["cancelled"]) + BookCells.Number(r["back_ordered"]) <= BookCells.Number(r["packs"])));
        }
    }
}
