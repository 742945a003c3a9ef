using System.Text.Json;
using CsCheck;
using Estimator.Engine.Catalogue;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Purchase;

/// <summary>Prices change what is bought and the bid, never the wiring: planning costs are not prices.</summary>
public sealed class PriceChangeTests
{
    private static readonly Job House = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 9), (DeviceKind.ThreeWaySwitch, 2), (DeviceKind.CeilingLight, 3));

    private static readonly JobEstimate Before = SmallJobs.Estimate(House);

    // Every item gets up to three offers of a random supplier, pack and price.
    private static readonly Gen<Offer[]> Prices = Gen.Select(Gen.Int[0, 3], Gen.Int[1, 300], Gen.Int[1, 90_000], Gen.Bool).Array[Catalogues.Shipped.Items.Length]
        .Select(rows => rows.Zip(Catalogues.Shipped.Items, (r, item) => Enumerable.Range(1, r.Item1)
            .Select(n => new Offer(item.Id, $"supplier {n}", r.Item2 * n, Money.FromDollars(r.Item3 / 100m / n), "imported") { Returnable = r.Item4 })).SelectMany(o => o).ToArray());

    [Fact]
    public void Estimate_RandomPricesImported_WiresTheSameByteForByte() => Prices.Sample(
        offers =>
        {
            var after = JobEstimate.Compute(House, Catalogues.Shipped.WithPrices(offers));
            Assert.Equal(Wired(Before), Wired(after));
            Assert.NotEqual(Before.Purchase.Total.Value, after.Purchase.Total.Value);
            Assert.NotEqual(Before.Bid.Price.Value, after.Bid.Price.Value);
        },
        iter: 30);

    private static string Wired(JobEstimate estimate) => JsonSerializer.Serialize(new
    {
        estimate.Wiring.Circuits,
        estimate.Wiring.Runs,
        estimate.Wiring.Boxes,
        estimate.Wiring.PlanningCostE4,
        estimate.Takeoff.Lines,
        estimate.Takeoff.Pieces,
        Hours = estimate.Labor.Total,
    });
}
