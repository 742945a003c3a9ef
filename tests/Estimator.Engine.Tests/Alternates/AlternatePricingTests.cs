using Estimator.Engine.Alternates;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Alternates;

public sealed class AlternatePricingTests
{
    private static readonly Job Base = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 5), (DeviceKind.CeilingLight, 2), (DeviceKind.SinglePoleSwitch, 1), (DeviceKind.SmokeAlarm, 1));

    [Fact]
    public void Price_OfAnAlternate_IsTheChangedJobLessTheJob()
    {
        var (job, changed) = (With(("a", "Three more receptacles", MoreReceptacles)), SmallJobs.Estimate(MoreReceptacles(Base)));
        var (before, priced) = (SmallJobs.Estimate(job), Priced(job, "a"));
        Assert.Equal(changed.Bid.Price.Value - before.Bid.Price.Value, priced.Price.Value);
        Assert.Equal(changed.Labor.Total.Value - before.Labor.Total.Value, priced.Hours.Value);
        Assert.True(priced.Price.Value > 0);
        Assert.Contains(priced.Parts, p => p.Quantity == 3 && p.Description.StartsWith("Duplex receptacle", StringComparison.Ordinal));
        Assert.Empty(ExplanationCheck.Problems(priced.Book));
    }

    [Fact]
    public void Price_OfADeduct_IsBelowZeroAndTellsOfItsFindings()
    {
        var priced = Priced(With(("d", "No smoke alarm", job => job.With(r => r with { Counts = [.. r.Counts.Where(c => c.Kind is not DeviceKind.SmokeAlarm)] }))), "d");
        Assert.True(priced.Price.Value < 0);
        Assert.NotEmpty(priced.NewFindings);
    }

    [Fact]
    public void Base_WithAlternates_HasThePriceItHadWithout() => Assert.Equal(
        SmallJobs.Estimate(Base).Bid.Price.Value, SmallJobs.Estimate(With(("a", "More", MoreReceptacles), ("b", "Larger", LargerFee))).Bid.Price.Value);

    [Fact]
    public void Taken_AnAlternate_HasExactlyItsPriceAndLeavesTheList()
    {
        var job = With(("a", "More", MoreReceptacles), ("b", "Fee", LargerFee));
        var taken = AlternateChanges.Taken(job, ["a"]).Job;
        Assert.Equal(Priced(job, "a").After.Bid.Price.Value, SmallJobs.Estimate(taken).Bid.Price.Value);
        Assert.Equal("b", Assert.Single(taken.Alternates).Id);
        Assert.True(JobFile.Read(JobFile.Write(taken), "taken.json").Ok);
    }

    [Fact]
    public void Package_OfTwo_IsWorkedOutTogether()
    {
        var job = With(("a", "More", MoreReceptacles), ("b", "Fee", LargerFee));
        Assert.Equal(SmallJobs.Estimate(LargerFee(MoreReceptacles(Base))).Bid.Price.Value, Priced(job, "a", "b").After.Bid.Price.Value);
    }

    [Fact]
    public void Price_WhereTheTargetIsGone_SaysWhatIsMissing()
    {
        var job = With(("a", "More", MoreReceptacles));
        var gone = job.With(r => r with { Counts = [.. r.Counts.Where(c => c.Kind is not DeviceKind.DuplexReceptacle)] });
        var priced = AlternatePricing.For(SmallJobs.Estimate(gone), ["a"], Catalogues.Shipped);
        Assert.False(priced.Ok);
        Assert.Contains("duplex_receptacle", priced.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Price_OfUnreadableChanges_SaysWhatIsAccepted()
    {
        var job = Base with { Alternates = [new Alternate { Id = "x", Name = "x", Changes = ["no change"] }] };
        Assert.Contains("set_field", AlternatePricing.For(SmallJobs.Estimate(job), ["x"], Catalogues.Shipped).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Price_OfAnAlternateWithinAnAlternate_IsRefused()
    {
        var inner = AlternateChanges.Of(Base, "x", "x", job => job with { Alternates = [new Alternate { Id = "y", Name = "y", Changes = ["z"] }] });
        Assert.False(AlternateChanges.Applied(Base with { Alternates = [inner] }, ["x"]).Ok);
    }

    [Fact]
    public void Read_APackageOfNoAlternate_SaysWhichIdIsMissing() => Assert.Contains(
        JobFile.Read(JobFile.Write(Base with { AlternatePackages = [new AlternatePackage { Id = "g", Name = "Better", Alternates = ["q"] }] }), "job.json").Problems,
        p => p.Path == "$.alternate_packages[0].alternates[0]");

    // job_bands, point 10: one more receptacle is one unit price, about 10 to 20 ft and 0.5 to 0.7 h where no new circuit is needed (common practice, no source).
    [Fact]
    public void UnitPrices_OfASmallJob_ArePositiveAndSmall()
    {
        var prices = UnitPricing.For(SmallJobs.Estimate(Base), Catalogues.Shipped);
        Assert.Equal(["One more receptacle", "One more switch", "One more ceiling light", "One more smoke alarm", "One more circuit of its own, with its receptacle"], prices.Select(p => p.What));
        Assert.All(prices, p => Assert.InRange(p.Price.Value, 5m, 400m));
        Assert.InRange(prices[0].Hours.Value, 0.3m, 1.2m);
        Assert.All(prices, p => Assert.Empty(ExplanationCheck.Problems(p.Book)));
    }

    // What was offered with a bid can still be taken once the bid is sent: its devices come beside what is frozen, or go, or are exchanged in their place.
    [Fact]
    public void Pin_OfAJobWithAlternates_LeavesThemToBeTaken()
    {
        var job = With(
            ("more", "Three more receptacles", MoreReceptacles),
            ("less", "No smoke alarm", j => j.With(r => r with { Counts = [.. r.Counts.Where(c => c.Kind is not DeviceKind.SmokeAlarm)] })),
            ("dim", "A dimmer", j => j.With(r => r with { Counts = [.. r.Counts.Select(c => c.Kind is DeviceKind.SinglePoleSwitch ? c with { Kind = DeviceKind.Dimmer } : c)] })),
            ("own", "A circuit of its own", j => j with { Equipment = j.Equipment.Add(new Equipment { Id = "E9", Kind = EquipmentKind.Refrigerator, Room = "R1", OwnCircuit = true }) }),
            ("fee", "A larger fee", LargerFee));
        var sold = SmallJobs.Estimate(job);
        var frozen = SmallJobs.Estimate(FrozenAlternates.Pin(sold));
        Assert.True(JobFile.Read(JobFile.Write(frozen.House.Job), "frozen").Ok);
        foreach (var (id, kind, more) in new[] { ("more", DeviceKind.DuplexReceptacle, 3), ("less", DeviceKind.SmokeAlarm, -1), ("dim", DeviceKind.Dimmer, 1), ("own", DeviceKind.DuplexReceptacle, 0), ("fee", DeviceKind.DuplexReceptacle, 0) })
        {
            var taken = AlternatePricing.For(frozen, [id], Catalogues.Shipped);
            Assert.True(taken.Ok, taken.Ok ? "" : taken.Problem);
            Assert.Equal(more, Devices(taken.Value.After, kind) - Devices(frozen, kind));
            Assert.Equal(Math.Sign(AlternatePricing.For(sold, [id], Catalogues.Shipped).Value.Price.Value), Math.Sign(taken.Value.Price.Value));
        }

        var dimmed = AlternatePricing.For(frozen, ["dim"], Catalogues.Shipped).Value.After;
        Assert.Equal(frozen.Layout.Devices.Length, dimmed.Layout.Devices.Length);
        Assert.Equal(frozen.Controls.Groups.Length, dimmed.Controls.Groups.Length);

        static int Devices(JobEstimate estimate, DeviceKind kind) => estimate.Layout.Devices.Count(d => d.Kind == kind);
    }

    [Fact]
    public void Pin_OfAnAlternateThatLeavesEquipmentOut_LeavesItToBeTaken()
    {
        var with = AddedEquipment.Appliance(Base, "R1");
        var job = with with { Alternates = [AlternateChanges.Of(with, "out", "No refrigerator", j => j with { Equipment = [] })] };
        var taken = AlternatePricing.For(SmallJobs.Estimate(FrozenAlternates.Pin(SmallJobs.Estimate(job))), ["out"], Catalogues.Shipped);
        Assert.True(taken.Ok, taken.Ok ? "" : taken.Problem);
        Assert.Empty(taken.Value.After.Layout.Equipment);
        Assert.True(taken.Value.Price.Value < 0);
    }

    [Fact]
    public void UnitPrice_OfACircuit_IsLeftOutWhereNoPanelHasASpace()
    {
        var full = Base with { Panels = [Base.Panels[0] with { Existing = true, Spaces = 2 }] };
        Assert.DoesNotContain(UnitPricing.For(SmallJobs.Estimate(full), Catalogues.Shipped), p => p.What.StartsWith("One more circuit", StringComparison.Ordinal));
    }

    // Ten feet more of a trench are the labor table's hours for ten feet of it, at least.
    [Fact]
    public void UnitPrice_OfTrench_CostsTenFeetOfDigging()
    {
        var job = Base with
        {
            Buildings = [new Building { Id = "B1", Name = "Shed" }],
            Levels = [Base.Levels[0] with { Rooms = [.. Base.Levels[0].Rooms, new Room { Id = "shed", Kind = RoomKind.Storage, Building = "B1", At = new GridPoint(Length.FromFeet(60), Length.Zero), Size = new RectangleSize(Length.FromFeet(10), Length.FromFeet(10)), Counts = [new DeviceCount { Kind = DeviceKind.DuplexReceptacle, Count = 1 }] }] }],
        };
        var trench = UnitPricing.For(SmallJobs.Estimate(job), Catalogues.Shipped).Single(p => p.What == "10 more feet of trench");
        var table = Catalogues.Shipped.LaborUnits.Single(u => u.Item == "trench");
        Assert.Equal("Shed", trench.Room);
        Assert.InRange(trench.Hours.Value, 10 * table.Hours / table.Per, 10 * table.Hours / table.Per + 0.5m);
        Assert.True(trench.Price.Value > 0);
    }

    private static PricedAlternate Priced(Job job, params string[] ids) => AlternatePricing.For(SmallJobs.Estimate(job), ids, Catalogues.Shipped).Value;

    private static Job With(params (string Id, string Name, Func<Job, Job> Change)[] alternates) =>
        Base with { Alternates = [.. alternates.Select(a => AlternateChanges.Of(Base, a.Id, a.Name, a.Change))] };

    private static Job MoreReceptacles(Job job) =>
        job.With(r => r with { Counts = [.. r.Counts.Select(c => c.Kind is DeviceKind.DuplexReceptacle ? c with { Count = c.Count + 3 } : c)] });

    private static Job LargerFee(Job job) => job with { Bid = job.Bid with { Permit = Money.FromDollars(431) } };
}
