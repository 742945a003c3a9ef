using Estimator.Engine.Explanations;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Framing;

/// <summary>Rooms with sizes and no place stand beside one another, and their places follow from stated sizes alone.</summary>
public sealed class ArrangedRoomsTests
{
    // 14 x 12, 12 x 10 and 10 x 8 ft make 368 sq ft, so a row is 19 ft long: one room a row, deepest first, above the placed room's 12 ft.
    [Fact]
    public void Rooms_WithoutAPlace_StandInRowsAboveThosePlaced()
    {
        var estimate = SmallJobs.Estimate(Job());
        Assert.Equal((0m, 12m), Corner(estimate, "A"));
        Assert.Equal((0m, 24m), Corner(estimate, "B"));
        Assert.Equal((0m, 34m), Corner(estimate, "C"));
    }

    [Fact]
    public void Places_OfArrangedRooms_FollowFromSizes()
    {
        var estimate = SmallJobs.Estimate(Job());
        var room = estimate.House.Rooms.Single(r => r.Source.Id == "C");
        Assert.Equal(
            ["$.levels[0].rooms[0].at[1]", "$.levels[0].rooms[0].size.depth", "$.levels[0].rooms[1].size.depth", "$.levels[0].rooms[3].size.depth"],
            Leaves(estimate.Book, room.CornerFacts.MinBy(c => c.Y.Value).Y.Node).Order(StringComparer.Ordinal).Distinct());
        Assert.Empty(ExplanationCheck.Problems(estimate.Book));
    }

    private static Job Job()
    {
        var job = SmallJobs.OneRoom(RoomKind.Bedroom, (DeviceKind.DuplexReceptacle, 2));
        Room Loose(string id, int width, int depth) =>
            job.Levels[0].Rooms[0] with { Id = id, Size = new RectangleSize(Length.FromFeet(width), Length.FromFeet(depth)), At = null };
        return job with { Levels = [job.Levels[0] with { Rooms = [.. job.Levels[0].Rooms, Loose("A", 14, 12), Loose("C", 10, 8), Loose("B", 12, 10)] }] };
    }

    private static (decimal X, decimal Y) Corner(JobEstimate estimate, string id)
    {
        var facts = estimate.House.Rooms.Single(r => r.Source.Id == id).CornerFacts;
        return (facts.Min(c => c.X.AsLength().Value.ToFeet()), facts.Min(c => c.Y.AsLength().Value.ToFeet()));
    }

    private static IEnumerable<string> Leaves(ExplanationBook book, NodeRef at) => book[at] is var node && node.Inputs.IsEmpty ? [node.Rule] : node.Inputs.SelectMany(i => Leaves(book, i));
}
