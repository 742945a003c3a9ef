using Estimator.Engine.Catalogue;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase;
using Estimator.Engine.Purchase.Suppliers;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Purchase.Suppliers;

/// <summary>A job bought at each supplier and at those that were chosen.</summary>
public sealed class SupplyPlansTests
{
    private static readonly JobEstimate Estimate = SmallJobs.Estimate(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 6), (DeviceKind.CeilingLight, 2), (DeviceKind.SinglePoleSwitch, 1)));

    [Fact]
    public void Chosen_SplitOfTheSamples_CostsWhatTheChoiceSays()
    {
        var terms = new[] { new SupplierTerms("sample-a", Money.FromDollars(30), Money.FromDollars(50), Money.FromDollars(400)), new SupplierTerms("sample-b", Money.FromDollars(10), Money.Zero, null) };
        var plans = SupplyPlans.Of(Jobs, Catalogues.Shipped, StockOnHand.Empty, terms);
        foreach (var choice in SupplyChoosing.Single(plans.Table).Append(SupplyChoosing.Split(plans.Table)))
        {
            var plan = Buying.Together(Jobs, plans.Chosen(Catalogues.Shipped, choice));
            Assert.Equal(choice.Orders.Sum(o => o.Goods.ToDollars()), plan.Total.Value);
            Assert.All(plan.Lines.SelectMany(l => l.Packs.Select(p => (l.ItemId, p.Offer.Supplier))), x => Assert.Equal(choice.SupplierOf(x.ItemId), x.Supplier));
        }
    }

    // A price that a supplier lacks is missing in its total and named, never nothing.
    [Fact]
    public void Of_SupplierWithoutAnItemOrTooShortACoil_IsMissingIt()
    {
        var cable = Estimate.Purchase.Cuts[0].ItemId;
        var offered = Catalogues.Shipped.WithPrices([new Offer(cable, "short", 5, Money.FromDollars(1), ""), new Offer(cable, "long", 250, Money.FromDollars(90), "")]);
        var plans = SupplyPlans.Of(Jobs, offered, StockOnHand.Empty, []);
        Assert.Equal(["long"], plans.Table.Terms.Where((_, s) => plans.Table.Costs[plans.Table.Items.IndexOf(cable)][s] is not null).Select(t => t.Supplier));
        var single = SupplyChoosing.Single(plans.Table).Single(c => c.Orders.Any(o => o.Supplier == "long"));
        Assert.Equal(plans.Table.Items.Length - 1, single.Missing.Length);
        Assert.All(single.Missing, m => Assert.Null(single.SupplierOf(m)));
    }

    [Theory]
    [InlineData("Northlake", "NL", null, null, true)]
    [InlineData("Northlake", "NL", "northlake ", null, true)]
    [InlineData("Northlake", "NL", "Northlake", "NL", true)]
    [InlineData("Northlake", "NL", "Northlake", "NX", false)]
    [InlineData("Northlake", "", "Northlake", "NX", true)]
    [InlineData("Northlake", "", "Fairmont", null, false)]
    [InlineData("", "", "Fairmont", "F", true)]
    public void Fits_MakeAndSeries_AsTheListingSays(string make, string series, string? panelMake, string? panelSeries, bool fits)
    {
        var offer = new Offer("breaker-1-20-plain", "s", 1, Money.FromDollars(5), "") { Make = make, Series = series };
        Assert.Equal(fits, BreakerFit.Fits(offer, [Estimate.House.Job.Panels[0] with { Make = panelMake, Series = panelSeries }]));
    }

    // The price of a breaker of another make changes what is bought, never where a cable runs.
    [Fact]
    public void Compute_BreakersOfAnotherMake_AreNotBoughtAndWiringStays()
    {
        var breaker = Estimate.Purchase.Lines.First(l => l.ItemId.StartsWith("breaker", StringComparison.Ordinal)).ItemId;
        var cheap = new Offer(breaker, "s", 1, Money.FromDollars(0.01m), "") { Make = "Northlake" };
        var job = Estimate.House.Job with { Panels = [.. Estimate.House.Job.Panels.Select(p => p with { Make = "Fairmont" })] };
        var other = JobEstimate.Compute(job, Catalogues.Shipped.WithPrices([cheap]));
        var same = JobEstimate.Compute(job with { Panels = [.. job.Panels.Select(p => p with { Make = "Northlake" })] }, Catalogues.Shipped.WithPrices([cheap]));
        Assert.Null(other.Purchase.Lines.Single(l => l.ItemId == breaker).Cost);
        Assert.NotNull(same.Purchase.Lines.Single(l => l.ItemId == breaker).Cost);
        Assert.Equal(same.Wiring.Runs.Select(r => (r.Id, r.Total.Value)), other.Wiring.Runs.Select(r => (r.Id, r.Total.Value)));
        Assert.Single(BreakerFit.ToSettle(same.Purchase, [("Small", job.Panels[0] with { Make = null })]));
    }

    [Theory]
    [InlineData("nm_b-12-2", WorkPhase.RoughIn)]
    [InlineData("plate-1-duplex", WorkPhase.TrimOut)]
    public void Of_Item_IsTheFirstPhaseWithHours(string item, WorkPhase phase) => Assert.Equal(phase, BuyingPhase.Of(Catalogues.Shipped, item));

    private static IReadOnlyList<(string, Engine.Takeoff.TakeoffResult)> Jobs => [(Estimate.House.Job.Id, Estimate.Takeoff)];
}
