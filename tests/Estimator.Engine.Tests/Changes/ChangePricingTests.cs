using System.Collections.Concurrent;
using Estimator.Engine.Changes;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;
using Estimator.TestKit.Houses;

namespace Estimator.Engine.Tests.Changes;

/// <summary>What a change of a sold job costs.</summary>
/// <remarks>
/// Source of the rule: AIA Document A201-2017, 7.3.8: a deletion is credited at actual net cost; where additions and credits come together, overhead and profit are figured on the net increase, if any.
/// </remarks>
public sealed class ChangePricingTests
{
    private const int Houses = 40;

    private static readonly JobEstimate Sold = SmallJobs.Estimate(Priced(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 4), (DeviceKind.CeilingLight, 1), (DeviceKind.SinglePoleSwitch, 1))));

    [Fact]
    public void Of_TheSameJob_CostsNothing()
    {
        var change = ChangePricing.Of(Sold, SmallJobs.Estimate(FrozenWiring.Pin(Sold)), WorkDone.Nothing);
        Assert.Empty(change.Lines);
        Assert.Equal((0m, 0m, 0m), (change.Price.Value, change.Hours.Value, change.Days.Value));
        Assert.Empty(change.Reasons);
    }

    [Fact]
    public void Of_OneMoreReceptacle_IsAboutAUnitPrice()
    {
        var change = ChangePricing.Of(Sold, More(1), WorkDone.Nothing);
        // 0.5 to 0.7 h and 10 to 20 ft for one more receptacle, common practice, no source; a small room stays a little below.
        Assert.InRange(change.Hours.Value, 0.4m, 0.75m);
        Assert.Equal(1, change.Days.Value);
        Assert.DoesNotContain(change.Lines, l => l.Kind is ChangeKind.Removed && l.ItemId.StartsWith("nm_b", StringComparison.Ordinal));
        Assert.InRange(change.Price.Value, 40m, 120m);
    }

    // Trips of the job are paid already: a change that begins no further day drives no further trip, one of many hours does.
    [Fact]
    public void Of_AChangeWithDrivingAsHours_DrivesItsOwnTrips()
    {
        var job = Sold.House.Job with { Bid = Sold.House.Job.Bid with { Travel = TravelBy.Hours, Drive = new DriveTime { HoursATrip = 0.5m } } };
        var sold = SmallJobs.Estimate(job);
        Assert.Equal((0m, 0), Change(0));
        Assert.Equal((1m, 0), Change(1));
        Assert.Equal((2m, 1), Change(30));

        (decimal Days, int Driving) Change(int receptacles)
        {
            var change = ChangePricing.Of(sold, SmallJobs.Estimate(FrozenWiring.Pin(sold).With(r => r with { Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = receptacles }] })), WorkDone.Nothing);
            return (change.Days.Value, change.Lines.Count(l => l.ItemId == "driving"));
        }
    }

    [Fact]
    public void Of_AnAddition_TakesOverheadAndProfitOnTheNetIncrease()
    {
        var change = ChangePricing.Of(Sold, More(2), WorkDone.Nothing);
        var net = change.Lines.Sum(l => l.Amount.Value);
        Assert.True(net > 0);
        // By hand: 20 % overhead, then 10 % profit on cost with overhead.
        var overhead = decimal.Round(net * 0.20m, 2, MidpointRounding.AwayFromZero);
        var profit = decimal.Round((net + overhead) * 0.10m, 2, MidpointRounding.AwayFromZero);
        Assert.Equal(net + overhead + profit, change.Price.Value);
    }

    [Fact]
    public void Of_AnAdditionWithTaxOnTheWholePrice_ChargesItOnTheChange()
    {
        var job = Sold.House.Job with { Bid = Sold.House.Job.Bid with { SalesTaxOn = SalesTaxOn.WholePrice } };
        var sold = SmallJobs.Estimate(job);
        var change = ChangePricing.Of(sold, SmallJobs.Estimate(FrozenWiring.Pin(sold).With(r => r with { Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 1 }] })), WorkDone.Nothing);
        var before = change.Sums.Where(s => s.Id != "sales-tax").Sum(s => s.Amount.Value);
        Assert.Equal(decimal.Round(before * 0.06m, 2, MidpointRounding.AwayFromZero), change.Sums.Single(s => s.Id == "sales-tax").Amount.Value);
        Assert.Equal(change.Price.Value, change.Sums.Sum(s => s.Amount.Value));
    }

    [Fact]
    public void Of_ADeletion_GivesBackNetCostAndNoOverhead()
    {
        var less = ChangePricing.Of(Sold, Without("R1/duplex_receptacle-4"), WorkDone.Nothing);
        Assert.True(less.Price.Value < 0);
        Assert.Equal(0m, less.Sums.Single(s => s.Id == "overhead").Amount.Value + less.Sums.Single(s => s.Id == "profit").Amount.Value);
        Assert.Equal(less.Lines.Sum(l => l.Amount.Value), less.Price.Value);
    }

    [Fact]
    public void Of_ADeletion_GivesBackLessTheFartherTheWorkIs()
    {
        var less = Without("R1/duplex_receptacle-4");
        var prices = new[] { WorkDone.Nothing, WorkDone.RoughedIn, WorkDone.TrimmedOut }.Select(done => ChangePricing.Of(Sold, less, done).Price.Value).ToList();
        Assert.True(prices[0] < prices[1] && prices[1] < prices[2], string.Join(", ", prices));
        // Once everything is in, taking out costs hours and nothing comes back.
        Assert.True(prices[2] > 0);
    }

    [Fact]
    public void Of_ADeviceMovedToAnotherRoom_CountsItGoneAndCome()
    {
        var two = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 4));
        two = two with { Levels = [two.Levels[0] with { Rooms = [.. two.Levels[0].Rooms, new Room { Id = "R2", Kind = RoomKind.Bedroom, Size = new RectangleSize(Length.FromFeet(12), Length.FromFeet(12)), At = new GridPoint(Length.FromFeet(16.5m), Length.Zero), Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 3 }] }] }] };
        var sold = SmallJobs.Estimate(two);
        var moved = Removing.Device(FrozenWiring.Pin(sold), "R1/duplex_receptacle-4").With(r => r.Id == "R2" ? r with { Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 1 }] } : r);
        var change = ChangePricing.Of(sold, SmallJobs.Estimate(moved), WorkDone.RoughedIn);
        var kinds = change.Lines.Where(l => l.ItemId.StartsWith("receptacle", StringComparison.Ordinal) || l.ItemId.StartsWith("duplex", StringComparison.Ordinal)).Select(l => l.Kind).ToList();
        Assert.Contains(ChangeKind.Added, kinds);
        Assert.Contains(ChangeKind.Removed, kinds);
        Assert.True(change.Price.Value > 0);
    }

    [Fact]
    public void Of_AFullCircuit_SaysThatANewOneComes()
    {
        var sold = SmallJobs.Estimate(Sold.House.Job with { Practice = new Practice { OutletsPer20A = 4 } });
        var after = SmallJobs.Estimate(FrozenWiring.Pin(sold).With(r => r with { Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 1 }] }));
        Assert.Contains(ChangePricing.Of(sold, after, WorkDone.Nothing).Reasons, r => r.StartsWith("A new circuit of 20 A", StringComparison.Ordinal));
    }

    // The circuit of the room has the twelve outlets of its practice in the sample, so the next one is led there and the way is dear.
    [Fact]
    public void Of_AFullCircuitBesideOneWithRoom_SaysWhyTheOtherComes()
    {
        var sold = SmallJobs.Estimate(Engine.JobFiles.JobFile.Read(File.ReadAllText(Path.Combine(TestData.Repository, "src", "Estimator.Cli", "Samples", "basement-finish.json")), "basement").Job);
        var room = sold.House.Rooms.Single(r => r.Source.Name == "Family room").Source;
        var after = SmallJobs.Estimate(FrozenWiring.Pin(sold).With(r => r.Id == room.Id ? r with { Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 1 }] } : r));
        var reason = Assert.Single(ChangePricing.Of(sold, after, WorkDone.Nothing).Reasons);
        Assert.StartsWith("The nearest circuit in Family room, ", reason, StringComparison.Ordinal);
        Assert.Contains(" has as many outlets as a circuit is given, so ", reason, StringComparison.Ordinal);
        Assert.DoesNotContain(ChangePricing.Of(Sold, More(1), WorkDone.Nothing).Reasons, r => r.Contains("is led there", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_RandomHouses_CreditsFallBelowAddRatesAndLinesAddUp()
    {
        var problems = new ConcurrentQueue<string>();
        Parallel.For(0, Houses, n =>
        {
            var sold = SmallJobs.Estimate(HouseGen.Number(n));
            var room = sold.House.Rooms.First(r => r.Source.Kind is not (RoomKind.Void or RoomKind.Outdoors)).Source.Id;
            var after = SmallJobs.Estimate(FrozenWiring.Pin(sold).With(r => r.Id == room ? r with { Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 1 + n % 4 }] } : r));
            foreach (var done in Enum.GetValues<WorkDone>())
            {
                var (add, back) = (ChangePricing.Of(sold, after, done), ChangePricing.Of(after, sold, done));
                if (-back.Price.Value > add.Price.Value)
                {
                    problems.Enqueue($"house {n}, {done}: adds {add.Price.Value}, gives back {back.Price.Value}");
                }

                foreach (var change in new[] { add, back })
                {
                    var sums = change.Sums.Sum(s => s.Amount.Value);
                    var lines = change.Lines.Sum(l => l.Amount.Value);
                    var net = change.Sums.Where(s => s.Id is "added" or "removed").Sum(s => s.Amount.Value);
                    if (sums != change.Price.Value || lines != net || decimal.Round(change.Price.Value, 2, MidpointRounding.AwayFromZero) != change.Price.Value)
                    {
                        problems.Enqueue($"house {n}, {done}: lines {lines}, net {net}, sums {sums}, price {change.Price.Value}");
                    }

                    foreach (var problem in ExplanationCheck.Problems(change.Book))
                    {
                        problems.Enqueue($"house {n}: {problem}");
                    }
                }
            }
        });
        Assert.True(problems.IsEmpty, $"{problems.Count}\n{string.Join('\n', problems.Take(20))}");
    }

    private static JobEstimate More(int receptacles) =>
        SmallJobs.Estimate(FrozenWiring.Pin(Sold).With(r => r with { Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = receptacles }] }));

    private static JobEstimate Without(string device) => SmallJobs.Estimate(Removing.Device(FrozenWiring.Pin(Sold), device));

    private static Job Priced(Job job) => job with { Bid = new BidSettings { OverheadPercent = Percent.FromHundredths(20), ProfitPercent = Percent.FromHundredths(10), MaterialTaxPercent = Percent.FromHundredths(6) } };
}
