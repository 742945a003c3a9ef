using Estimator.Engine;
using Estimator.Engine.House;
using Estimator.Engine.Wiring.Feeders;
using Estimator.Engine.Wiring.Routing;

namespace Estimator.TestKit;

/// <summary>Adds up the parts of an estimate by itself: runs, cable, boxes, hours, purchases and the bid; each whole must be what its parts come to.</summary>
public static class SumCheck
{
    private const decimal NanometresPerFoot = 304_800_000m;

    /// <summary>The wholes that are not the sum of their parts.</summary>
    public static IEnumerable<string> Problems(JobEstimate estimate) =>
        Wholes(estimate).Where(w => Math.Abs(w.Whole - w.Parts) > 0.000001m).Select(w => $"{w.What} is {w.Whole}, its parts come to {w.Parts}");

    private static bool InConduit(Run run) => run.Cable.Method is WiringMethod.Emt or WiringMethod.BuriedConduit;

    private static bool InConduit(Feeder feeder) => feeder.Method is WiringMethod.Emt or WiringMethod.BuriedConduit;

    private static IEnumerable<(string What, decimal Whole, decimal Parts)> Wholes(JobEstimate estimate)
    {
        var (wiring, lines) = (estimate.Wiring, estimate.Takeoff.Lines.ToLookup(l => l.ItemId, l => l.Quantity.Value));
        foreach (var run in wiring.Runs)
        {
            yield return (run.Id, run.Total.Value, run.Path.Horizontal.Value + run.Path.Vertical.Value + run.MakeUp.Value + run.Slack.Value);
        }

        var conduit = wiring.Runs.Where(InConduit).ToList();
        var feeders = wiring.Feeders.Where(InConduit).ToList();
        const int FeederConductors = 4;
        // 4 ft at each end of cable that comes out of the ground.
        var sleeves = 8 * (wiring.Runs.Count(r => r.Path.Trench is not null && r.Cable.Method is WiringMethod.Uf) + wiring.Feeders.Count(f => f.Path.Trench is not null && f.Method is WiringMethod.Uf));
        yield return ("conduit in feet", estimate.Takeoff.Lines.Where(l => l.Category == "conduit" && l.Unit == "foot").Sum(l => l.Quantity.Value), (conduit.Sum(r => r.Path.Horizontal.Value + r.Path.Vertical.Value) + feeders.Sum(f => f.Path.Horizontal.Value + f.Path.Vertical.Value)) / NanometresPerFoot + sleeves);
        yield return ("wire in conduit in feet", estimate.Takeoff.Lines.Where(l => l.Category == "wire").Sum(l => l.Quantity.Value), (conduit.Sum(r => r.Total.Value * r.Conductors.Length) + feeders.Sum(f => f.Total.Value * FeederConductors)) / NanometresPerFoot);
        foreach (var cable in wiring.Runs.Except(conduit).Select(r => (r.Cable.ItemId, r.Total)).Concat(wiring.Feeders.Except(feeders).Select(f => (f.ItemId, f.Total))).GroupBy(r => r.ItemId))
        {
            yield return ($"{cable.Key} in feet", lines[cable.Key].Sum(), cable.Sum(r => r.Total.Value) / NanometresPerFoot);
        }

        foreach (var box in wiring.Boxes.Where(b => b.Item is not null).GroupBy(b => b.Item!.ItemId))
        {
            yield return ($"{box.Key} boxes", lines[box.Key].Sum(), box.Count());
        }

        yield return ("bored holes", lines["bored-hole"].Sum(), wiring.Runs.Where(r => !r.Fished || InConduit(r)).Sum(r => r.Path.Bores.Value) + wiring.Feeders.Where(f => !f.Fished || InConduit(f)).Sum(f => f.Path.Bores.Value));
        yield return ("hours by item", estimate.Labor.Total.Value, estimate.Labor.Lines.Sum(l => l.Hours.Value));
        yield return ("hours by phase", estimate.Labor.Total.Value, estimate.Labor.ByPhase.Sum(p => p.Value.Value));
        yield return ("dollars of what is bought", estimate.Purchase.Total.Value, estimate.Purchase.Lines.Sum(l => l.Cost?.Value.ToDollars() ?? 0));
        yield return ("dollars of direct cost", estimate.Bid.DirectTotal.Value, estimate.Bid.DirectCost.Sum(l => l.Amount.Value));
        yield return ("dollars of the price", estimate.Bid.Price.Value, estimate.Bid.DirectTotal.Value + estimate.Bid.Additions.Sum(l => l.Amount.Value));
    }
}
