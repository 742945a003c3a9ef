using Estimator.Engine.Contracts;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Tests.Contracts;

public sealed class ChangeOrderTests
{
    private static readonly DateOnly Monday = new(2026, 3, 2);
    private static readonly ChangeOrder Draft = new(1, 2, [new(ChangeLineKind.Added, "Receptacle", 1, "each", null)], Money.FromDollars(120), 0, "Owner's wish", []);

    [Fact]
    public void State_FollowsFromWhatHappened()
    {
        Assert.Equal((ChangeState.Draft, true), (Draft.State, Draft.Pending));
        var sent = Noted(Draft, ChangeEventKind.Sent);
        Assert.Equal((ChangeState.Sent, true), (sent.State, sent.Pending));
        Assert.Equal((ChangeState.Accepted, false), (Noted(sent, ChangeEventKind.Accepted).State, Noted(sent, ChangeEventKind.Accepted).Pending));
        Assert.Equal(ChangeState.Declined, Noted(sent, ChangeEventKind.Declined).State);
        Assert.Equal(ChangeState.Withdrawn, Noted(Draft, ChangeEventKind.Withdrawn).State);
    }

    [Fact]
    public void Refusal_OfWhatCannotBe_SaysWhy()
    {
        Assert.Contains("send it first", Draft.Refusal(new(ChangeEventKind.Accepted, Monday)), StringComparison.Ordinal);
        var sent = Noted(Draft, ChangeEventKind.Sent);
        Assert.NotNull(sent.Refusal(new(ChangeEventKind.Sent, Monday)));
        Assert.Contains("part of the contract", Noted(sent, ChangeEventKind.Accepted).Refusal(new(ChangeEventKind.Withdrawn, Monday)), StringComparison.Ordinal);
        Assert.NotNull(Noted(sent, ChangeEventKind.Declined).Refusal(new(ChangeEventKind.Accepted, Monday)));
    }

    private static ChangeOrder Noted(ChangeOrder change, ChangeEventKind kind)
    {
        Assert.Null(change.Refusal(new(kind, Monday)));
        return change with { Events = change.Events.Add(new(kind, Monday)) };
    }
}
