using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.Engine.Payments;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Payments;

public sealed class PaymentPlanningTests
{
    private static readonly Job Bedroom = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 5), (DeviceKind.CeilingLight, 1), (DeviceKind.SinglePoleSwitch, 1));

    [Fact]
    public void Schedule_OfABid_AddsUpToThePriceByPhases()
    {
        var (estimate, plan) = Planned(Bedroom);
        Assert.Equal(estimate.Bid.Price.Value, plan.Total.Value);
        Assert.Equal(["permit", "rough_in", "panel", "trim_out", "test_final"], plan.Lines.Select(l => l.Id).Intersect(["permit", "rough_in", "panel", "trim_out", "test_final"]));
        Assert.All(plan.Lines, l => Assert.True(l.Value.Value > 0 && l.Value.Value % 0.01m == 0));
        Assert.Empty(ExplanationCheck.Problems(new ExplanationBook([.. estimate.Book.Pages, plan.Page])));
    }

    [Fact]
    public void Schedule_OfWorkByOthers_HasALineOfItsOwn()
    {
        var (_, plan) = Planned(Bedroom with { Bid = new BidSettings { Subcontract = Money.FromDollars(400) } });
        Assert.Contains(plan.Lines, l => l.Id == "subcontract" && l.Value.Value > 400);
    }

    [Fact]
    public void Schedule_OfOwnMilestones_FollowsTheirShares()
    {
        var (estimate, plan) = Planned(Bedroom with { Payment = new PaymentTerms { Milestones = [Of("a", 60), Of("b", 30), Of("c", 10)] } });
        Assert.Equal(["a", "b", "c"], plan.Lines.Select(l => l.Id));
        Assert.Equal(estimate.Bid.Price.Value, plan.Total.Value);
        Assert.InRange(plan.Lines[0].Value.Value - (estimate.Bid.Price.Value * 0.6m), -0.01m, 0.01m);
    }

    // California, Business and Professions Code 7159.5(a)(3): at most $1,000 or 10% of the contract, whichever is less (also the state board's bulletin 22-14).
    [Theory]
    [InlineData(30, 10, 1000)]
    [InlineData(30, 10, 20)]
    public void Deposit_WithCapsOfALaw_IsTheLeastOfThem(int asked, int capPercent, int capDollars)
    {
        var (estimate, plan) = Planned(Bedroom with { Payment = new PaymentTerms { DepositPercent = Percent.FromHundredths(asked), DepositCapPercent = Percent.FromHundredths(capPercent), DepositCap = Money.FromDollars(capDollars) } });
        Assert.Equal(Math.Min(capDollars, decimal.Floor(estimate.Bid.Price.Value * capPercent) / 100), plan.Deposit.Value);
    }

    [Fact]
    public void Terms_NotStated_AreThoseOfTheTable()
    {
        var (estimate, plan) = Planned(Bedroom);
        Assert.Equal(decimal.Floor(estimate.Bid.Price.Value * 10) / 100, plan.Deposit.Value);
        Assert.Equal((0m, 15, 1.5m), (plan.Terms.RetainagePercent, plan.Terms.DaysToPay, plan.Terms.LateChargePercent));
    }

    [Fact]
    public void JobFile_WithSharesOf90Percent_IsRefused()
    {
        var job = Bedroom with { Payment = new PaymentTerms { Milestones = [Of("a", 60), Of("a", 30)] } };
        var reading = JobFile.Read(JobFile.Write(job), "job.json");
        Assert.Equal(["$.payment.milestones[1].id", "$.payment.milestones"], reading.Problems.Select(p => p.Path));
    }

    private static Milestone Of(string id, int share) => new() { Id = id, Name = id, SharePercent = Percent.FromHundredths(share) };

    private static (JobEstimate Estimate, PaymentPlan Plan) Planned(Job job)
    {
        var estimate = SmallJobs.Estimate(job);
        return (estimate, PaymentPlanning.Compute(estimate, Catalogues.Shipped));
    }
}
