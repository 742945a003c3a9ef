using Estimator.Engine.House;
using Estimator.Engine.Layout;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Layout;

/// <summary>What is proposed where the user states no devices. The room is 16 by 12 ft with a 32 in door: one wall space of 53 ft 4 in.</summary>
public sealed class CodeMinimumTests
{
    // NEC 210.52(A)(1): 12 ft apart at most, so 53.33 / 12 gives 5; a firm that wants 8 ft gets 53.33 / 8, 7; one that wants 20 ft gets the code's 5.
    [Theory]
    [InlineData(null, 5)]
    [InlineData(8, 7)]
    [InlineData(20, 5)]
    public void Propose_WithTheFirmsOwnSpacing_TakesTheTighter(int? feet, int receptacles)
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom) with { Practice = new Practice { ReceptacleSpacing = feet is { } f ? Length.FromFeet(f) : null } };
        var room = CodeMinimum.Propose(job).Levels[0].Rooms[0];
        Assert.Equal(receptacles, room.Counts.Where(c => c.Kind is DeviceKind.DuplexReceptacle).Sum(c => c.Count));
    }
}
