using Estimator.Engine.Contracts;

namespace Estimator.Engine.Tests.Contracts;

public sealed class BidLifeTests
{
    private static readonly DateOnly Monday = new(2026, 3, 2);
    private static readonly BidLife Saved = new(30, []);

    [Fact]
    public void State_FollowsFromEventsAndDay()
    {
        Assert.Equal(BidState.Saved, Saved.State(Monday));
        var sent = Noted(Saved, BidEventKind.Sent, Monday);
        Assert.Equal((BidState.Sent, BidState.Sent, BidState.Expired), (sent.State(Monday), sent.State(Monday.AddDays(30)), sent.State(Monday.AddDays(31))));
        Assert.Equal(BidState.Declined, Noted(sent, BidEventKind.Declined, Monday).State(Monday));
        Assert.Equal(BidState.Withdrawn, Noted(sent, BidEventKind.Withdrawn, Monday).State(Monday));
        var won = Noted(Noted(sent, BidEventKind.Accepted, Monday.AddDays(40)), BidEventKind.RoughInPassed, Monday.AddDays(60));
        Assert.Equal((BidState.Accepted, Monday.AddDays(40), Monday.AddDays(60)), (won.State(Monday.AddYears(1)), won.AcceptedOn, won.RoughInOn));
        var done = Noted(won, BidEventKind.TrimmedOut, Monday.AddDays(90));
        Assert.Equal((BidState.Accepted, Monday.AddDays(60), Monday.AddDays(90)), (done.State(Monday.AddYears(1)), done.RoughInOn, done.TrimmedOutOn));
        Assert.Equal(BidState.Sent, Noted(Noted(sent, BidEventKind.Declined, Monday), BidEventKind.Sent, Monday.AddDays(90)).State(Monday.AddDays(100)));
    }

    [Fact]
    public void Refusal_OfWhatCannotBe_SaysWhy()
    {
        Assert.Contains("send it first", Saved.Refusal(new(BidEventKind.Accepted, Monday)), StringComparison.Ordinal);
        var sent = Noted(Saved, BidEventKind.Sent, Monday);
        Assert.Contains("2026-03-02", sent.Refusal(new(BidEventKind.Accepted, Monday.AddDays(-1))), StringComparison.Ordinal);
        Assert.NotNull(sent.Refusal(new(BidEventKind.RoughInPassed, Monday)));
        var won = Noted(sent, BidEventKind.Accepted, Monday);
        Assert.All(new[] { BidEventKind.Sent, BidEventKind.Declined, BidEventKind.Withdrawn, BidEventKind.Accepted }, k => Assert.Contains("contract", won.Refusal(new(k, Monday)), StringComparison.Ordinal));
        var passed = Noted(won, BidEventKind.RoughInPassed, Monday);
        Assert.NotNull(passed.Refusal(new(BidEventKind.RoughInPassed, Monday)));
        Assert.Contains("rough-in", won.Refusal(new(BidEventKind.TrimmedOut, Monday)), StringComparison.Ordinal);
        var done = Noted(passed, BidEventKind.TrimmedOut, Monday);
        Assert.All(Enum.GetValues<BidEventKind>(), k => Assert.NotNull(done.Refusal(new(k, Monday))));
    }

    private static BidLife Noted(BidLife life, BidEventKind kind, DateOnly on)
    {
        Assert.Null(life.Refusal(new(kind, on)));
        return life with { Events = life.Events.Add(new(kind, on)) };
    }
}
