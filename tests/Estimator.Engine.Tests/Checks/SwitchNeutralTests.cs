using Estimator.Engine.House;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Checks;

/// <summary>A neutral stands at switches that control lights. Source: NEC 404.2(C).</summary>
public sealed class SwitchNeutralTests
{
    // Fed at the light by the firm's wish where the rule allows it, a garage has none at its switch and is not asked; a bedroom gets one all the same.
    [Theory]
    [InlineData(RoomKind.Bedroom, true)]
    [InlineData(RoomKind.Garage, false)]
    public void Neutral_OfALight_IsAskedForByRoom(RoomKind kind, bool applies)
    {
        var job = SmallJobs.OneRoom(kind, (DeviceKind.CeilingLight, 1), (DeviceKind.SinglePoleSwitch, 1)) with { Practice = new Practice { ControlFeed = ControlFeed.AtLight } };
        var estimate = SmallJobs.Estimate(job);
        Assert.Equal(applies, estimate.AppliedRules.Contains("switch-neutral"));
        Assert.DoesNotContain(estimate.Findings, f => f.Code == "switch-neutral");
    }
}
