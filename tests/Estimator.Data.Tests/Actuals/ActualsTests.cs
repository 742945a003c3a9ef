using Estimator.Data.Actuals;
using Estimator.Data.Jobs;
using Estimator.Data.Tests.Databases;
using Estimator.Engine.Catalogue;
using Estimator.Engine.House;
using Estimator.Engine.Learning;
using Estimator.TestKit;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Data.Tests.Actuals;

/// <summary>What was written down of jobs, and what was decided on it, on either database.</summary>
public abstract class ActualsTests(TestDatabase database)
{
    private const string Job = "job-1";
    private const string Who = "You";

    private static readonly DateOnly Monday = new(2026, 3, 2);

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Load_AfterWriting_GivesItBackByDay()
    {
        var (store, _) = await NewAsync();
        await store.AddAsync(Job, new ActualHours(0, Monday.AddDays(1), WorkPhase.TrimOut, 3.25m, " lead and helper "), Token);
        await store.AddAsync(Job, new ActualHours(0, Monday, WorkPhase.RoughIn, 16, ""), Token);
        await store.PutAsync(Job, new UsedMaterial("nm_b-12-2", 300), Token);
        await store.PutAsync(Job, new UsedMaterial("nm_b-12-2", 310.5m), Token);
        await store.PutAsync(Job, new UsedMaterial("plate-1-duplex", 4), Token);
        await store.PutAsync(Job, new UsedMaterial("plate-1-duplex", 0), Token);
        var actuals = await store.LoadAsync(Job, Token);
        Assert.Equal([new ActualHours(2, Monday, WorkPhase.RoughIn, 16, ""), new ActualHours(1, Monday.AddDays(1), WorkPhase.TrimOut, 3.25m, "lead and helper")], actuals.Hours);
        Assert.Equal([new UsedMaterial("nm_b-12-2", 310.5m)], actuals.Material);
        Assert.Null(actuals.ClosedOn);
        await store.RemoveAsync(Job, 1, Token);
        Assert.Single((await store.LoadAsync(Job, Token)).Hours);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(1001)]
    public async Task Add_HoursBeyondTheLimits_AreRefused(int hours)
    {
        var (store, _) = await NewAsync();
        var refused = await Assert.ThrowsAsync<ArgumentException>(() => store.AddAsync(Job, new ActualHours(0, Monday, WorkPhase.Panel, hours, ""), Token));
        Assert.Contains("up to 1000", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Close_KeepsWhatCameOfIt_AndNothingMoreIsWritten()
    {
        var (store, _) = await NewAsync();
        JobOutcome[] outcomes = [new(LearnedKind.Hours, "rough_in", 20, 26.5m), new(LearnedKind.Material, "cable", 900, 960)];
        await store.CloseAsync(Job, Monday, outcomes, Who, Token);
        var closed = Assert.Single(await store.ClosedAsync(Token));
        Assert.Equal((Job, "Small job", Monday), (closed.JobId, closed.Name, closed.ClosedOn));
        Assert.Equal(outcomes, closed.Outcomes.Select(o => o with { Classes = [] }));
        await Assert.ThrowsAsync<ArgumentException>(() => store.AddAsync(Job, new ActualHours(0, Monday, WorkPhase.Panel, 1, ""), Token));
        await Assert.ThrowsAsync<ArgumentException>(() => store.PutAsync(Job, new UsedMaterial("staple", 1), Token));
        await Assert.ThrowsAsync<ArgumentException>(() => store.RemoveAsync(Job, 1, Token));
        await Assert.ThrowsAsync<ArgumentException>(() => store.CloseAsync(Job, Monday, [], Who, Token));
        await store.ReopenAsync(Job, Token);
        Assert.Empty(await store.ClosedAsync(Token));
        await store.AddAsync(Job, new ActualHours(0, Monday, WorkPhase.Panel, 1, ""), Token);
    }

    [Fact]
    public async Task Decide_ASecondTime_EndsTheFirstAndKeepsIt()
    {
        var (_, units) = await NewAsync();
        var (first, second) = (Proposal(1.2m), Proposal(1.3m));
        await units.DecideAsync([first], accepted: true, Who, Token);
        await units.DecideAsync([second], accepted: true, "Other", Token);
        var all = await units.ListAsync(Token);
        Assert.Equal([1.3m, 1.2m], all.Select(d => d.Proposal.Pooled.Factor));
        Assert.Equal(("Other", Who), (all[1].EndedBy, all[1].Who));
        Assert.Equal([new OwnUnit(LearnedKind.Hours, "rough_in", 1.3m, 2)], DecidedUnit.Standing(all));
        Assert.Equal(["a", "b"], all[0].Proposal.Jobs);
        Assert.Equal((1.1m, 1.5m), (all[0].Proposal.Pooled.Low, all[0].Proposal.Pooled.High));
    }

    // A job that was won is finished by being closed, and won again by being opened; closing says nothing of a bid that nobody accepted.
    [Theory]
    [InlineData(JobState.Won, JobState.Finished, JobState.Won)]
    [InlineData(JobState.Finished, JobState.Finished, JobState.Won)]
    [InlineData(JobState.Sent, JobState.Sent, JobState.Sent)]
    [InlineData(JobState.Draft, JobState.Draft, JobState.Draft)]
    public async Task Close_OfAWonJob_FinishesIt(JobState before, JobState closed, JobState opened)
    {
        var services = await database.NewCompanyAsync();
        var (jobs, store) = (services.GetRequiredService<JobStore>(), services.GetRequiredService<ActualsStore>());
        await jobs.CreateAsync(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 4)) with { Id = Job }, Who, Token);
        await jobs.SetStateAsync(Job, before, Token);
        await store.ReopenAsync(Job, Token);
        Assert.Equal(before, (await jobs.LoadAsync(Job, Token))!.State);
        await store.CloseAsync(Job, Monday, [], Who, Token);
        Assert.Equal(closed, (await jobs.LoadAsync(Job, Token))!.State);
        await store.ReopenAsync(Job, Token);
        Assert.Equal(opened, (await jobs.LoadAsync(Job, Token))!.State);
    }

    // Hours by class are kept with the job as it was closed; a row of before has none and counts for its phase.
    [Fact]
    public async Task Close_KeepsEstimatedHoursByClass()
    {
        var (store, _) = await NewAsync();
        JobOutcome[] outcomes = [new(LearnedKind.Hours, "rough_in", 20, 26.5m) { Classes = [new("cable", 8.25m), new("device", 11.75m)] }, new(LearnedKind.Hours, "trim_out", 6, 5)];
        await store.CloseAsync(Job, Monday, outcomes, Who, Token);
        var closed = Assert.Single(await store.ClosedAsync(Token)).Outcomes;
        Assert.Equal(outcomes[0].Classes, closed[0].Classes);
        Assert.Empty(closed[1].Classes);
        await store.ReopenAsync(Job, Token);
        await store.CloseAsync(Job, Monday, outcomes[1..], Who, Token);
        Assert.Equal(["trim_out"], Assert.Single(await store.ClosedAsync(Token)).Outcomes.Select(o => o.Key));
    }

    // Classes are accepted in one act and stand in front of their phase; the phase accepted later takes their place, and theirs alone.
    [Fact]
    public async Task Decide_AWholePhase_TakesThePlaceOfItsClasses()
    {
        var (_, units) = await NewAsync();
        await units.DecideAsync([Proposal(1.2m)], accepted: true, Who, Token);
        await units.DecideAsync([Proposal(1.5m) with { Key = "rough_in/cable" }, Proposal(1.1m) with { Key = "rough_in/device" }, Proposal(1.4m) with { Key = "panel/breaker" }], accepted: true, Who, Token);
        Assert.Equal(["panel/breaker", "rough_in", "rough_in/cable", "rough_in/device"], DecidedUnit.Standing(await units.ListAsync(Token)).Select(u => u.Key));
        await units.DecideAsync([Proposal(1.3m)], accepted: true, Who, Token);
        Assert.Equal([("panel/breaker", 1.4m), ("rough_in", 1.3m)], DecidedUnit.Standing(await units.ListAsync(Token)).Select(u => (u.Key, u.Factor)));
    }

    [Fact]
    public async Task Withdraw_TakesTheTableAgain_AndIsKept()
    {
        var (_, units) = await NewAsync();
        await units.DecideAsync([Proposal(1.2m)], accepted: true, Who, Token);
        await units.DecideAsync([Proposal(1.4m)], accepted: false, Who, Token);
        Assert.Single(DecidedUnit.Standing(await units.ListAsync(Token)));
        await units.WithdrawAsync(1, Who, Token);
        var all = await units.ListAsync(Token);
        Assert.Empty(DecidedUnit.Standing(all));
        Assert.Equal(2, all.Length);
    }

    [Fact]
    public async Task Another_Company_SeesNothingOfIt()
    {
        var (store, units) = await NewAsync();
        await store.CloseAsync(Job, Monday, [new JobOutcome(LearnedKind.Hours, "rough_in", 20, 26)], Who, Token);
        await units.DecideAsync([Proposal(1.2m)], accepted: true, Who, Token);
        var (others, theirs) = await NewAsync();
        Assert.Empty(await others.ClosedAsync(Token));
        Assert.Null((await others.LoadAsync(Job, Token)).ClosedOn);
        Assert.Empty(await theirs.ListAsync(Token));
    }

    private static Proposal Proposal(decimal factor) => new(LearnedKind.Hours, "rough_in", new Pooled(2, factor, 1.1m, 1.5m), ["a", "b"]);

    private async Task<(ActualsStore Store, OwnUnitStore Units)> NewAsync()
    {
        var services = await database.NewCompanyAsync();
        await services.GetRequiredService<JobStore>().CreateAsync(SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 4)) with { Id = Job }, Who, Token);
        return (services.GetRequiredService<ActualsStore>(), services.GetRequiredService<OwnUnitStore>());
    }
}
