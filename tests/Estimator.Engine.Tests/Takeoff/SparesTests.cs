using System.Collections.Immutable;
using CsCheck;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Learning;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase;
using Estimator.Engine.Takeoff;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Takeoff;

public sealed class SparesTests
{
    private static readonly Job Room = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 6), (DeviceKind.SinglePoleSwitch, 2), (DeviceKind.CeilingLight, 2));

    [Fact]
    public void Estimate_WithoutSpares_IsByteForByteTheSame()
    {
        var (plain, none) = (SmallJobs.Estimate(Room), SmallJobs.Estimate(With(Room, ("device", 0))));
        Assert.All(plain.Takeoff.Lines.Concat(none.Takeoff.Lines), l => Assert.Null(l.Spare));
        Assert.Equal(plain.Bid.Price.Value, none.Bid.Price.Value);
        Assert.Equal(plain.Purchase.Lines.Select(l => (l.ItemId, l.Needed.Value, l.Left)), none.Purchase.Lines.Select(l => (l.ItemId, l.Needed.Value, l.Left)));
    }

    // By hand: eight devices, 6 receptacles and 2 switches; 20 % of them is 1.6, so two are bought: one receptacle (1.2 leaves 0.2) and of what is left the switch (0.4 of one) comes first.
    [Fact]
    public void Spare_OfACategory_IsRoundedUpOnceForAllItsItems()
    {
        var estimate = SmallJobs.Estimate(With(Room, ("device", 20)));
        var devices = estimate.Takeoff.Lines.Where(l => l.Category == "device" && l.Quantity.Value > 0).ToList();
        Assert.Equal([("receptacle-15", 6m, 1m), ("switch-single-pole", 2m, 1m)], devices.Select(l => (l.ItemId, l.Quantity.Value, l.Spare?.Value ?? 0)));
        Assert.All(devices, l => Assert.Equal(l.Quantity.Value + l.Spare!.Value.Value, estimate.Purchase.Lines.Single(p => p.ItemId == l.ItemId).Needed.Value));
        Assert.Equal(SmallJobs.Estimate(Room).Labor.Total.Value, estimate.Labor.Total.Value);
        Assert.All(estimate.Takeoff.Lines.Where(l => l.Category != "device"), l => Assert.Null(l.Spare));
    }

    // 5 % of eight devices is four tenths of one: nobody buys a spare for that.
    [Fact]
    public void Spare_BelowHalfAPiece_IsNone() => Assert.All(SmallJobs.Estimate(With(Room, ("device", 5))).Takeoff.Lines, l => Assert.Null(l.Spare));

    // Whatever the percent: whole pieces, together the category rounded up, none of an item more than one above its share, and at least what the takeoff needs is bought.
    [Fact]
    public void Spare_OfAnyPercent_IsWholeAndTogetherRoundedUp()
    {
        var plain = SmallJobs.Estimate(Room);
        Gen.Select(Gen.Int[0, 5], Gen.Int[0, 1000]).Sample((at, tenths) =>
        {
            var category = new[] { "box", "device", "plate", "breaker", "connector", "fastener" }[at];
            var practice = new Practice { SparePercents = ImmutableSortedDictionary<string, Percent>.Empty.Add(category, Percent.FromHundredths(tenths / 10m)) };
            var page = new Engine.Explanations.PageWriter(4);
            var lines = new Spares(practice, Catalogues.Shipped, page).Over(plain.Takeoff.Lines).Where(l => l.Category == category && !l.OwnerSupplied).ToList();
            var all = lines.Sum(l => l.Quantity.Value) * tenths / 1000m;
            Assert.Equal(all < 0.5m ? 0 : decimal.Ceiling(all), lines.Sum(l => l.Spare?.Value ?? 0));
            Assert.All(lines.Where(l => l.Spare is not null), l => Assert.True(l.Spare!.Value.Value == decimal.Truncate(l.Spare.Value.Value) && l.Spare.Value.Value < (l.Quantity.Value * tenths / 1000m) + 1));
        }, iter: 200);
    }

    // Several jobs buy together what each of them buys spare.
    [Fact]
    public void Spare_OfSeveralJobs_IsBoughtForEach()
    {
        var estimate = SmallJobs.Estimate(With(Room, ("box", 10)));
        var together = Buying.Together([("a", estimate.Takeoff), ("b", estimate.Takeoff)], Catalogues.Shipped);
        Assert.All(estimate.Purchase.Lines.Where(l => l.Unit == "each"), l => Assert.Equal(2 * l.Needed.Value, together.Lines.Single(t => t.ItemId == l.ItemId).Needed.Value));
    }

    [Theory]
    [InlineData("cable", 3, "cut_tolerance_percent")]
    [InlineData("boxs", 3, "box, device")]
    [InlineData("box", 101, "0 to 100 percent")]
    public void Spare_OfNoCategory_IsRefusedWithWhatIsAccepted(string category, int percent, string accepted)
    {
        var reading = JobFile.Read(JobFile.Write(With(Room, (category, percent))), "job.json");
        Assert.False(reading.Ok);
        Assert.Contains(reading.Problems, p => p.ToString().Contains($"spare_percents.{category}", StringComparison.Ordinal) && p.ToString().Contains(accepted, StringComparison.Ordinal));
    }

    // What was accepted is written into a new job; read back it gives the same price, whatever is decided later.
    [Fact]
    public void Over_AcceptedWaste_IsKeptByTheJob()
    {
        OwnUnit[] own = [new(LearnedKind.Material, "box", 1.081m, 4), new(LearnedKind.Material, "device", 0.97m, 4), new(LearnedKind.Material, "bore", 1.5m, 4), new(LearnedKind.Material, "cable", 3m, 2)];
        var practice = OwnUnits.Over(new Practice(), own);
        Assert.Equal([new("box", Percent.FromHundredths(8.1m))], practice.SparePercents);
        Assert.Equal(100, practice.CutTolerancePercent!.Value.ToHundredths());
        var job = Room with { Practice = practice with { CutTolerancePercent = null } };
        var again = JobFile.Read(JobFile.Write(job), "job.json");
        Assert.Equal(SmallJobs.Estimate(job).Bid.Price.Value, SmallJobs.Estimate(again.Job).Bid.Price.Value);
        Assert.True(SmallJobs.Estimate(job).Takeoff.Lines.Any(l => l.Spare is not null));
    }

    private static Job With(Job job, params (string Category, decimal Percent)[] spares) => job with
    {
        Practice = job.Practice with { SparePercents = spares.ToImmutableSortedDictionary(s => s.Category, s => Percent.FromHundredths(s.Percent), StringComparer.Ordinal) },
    };
}
