using Estimator.Engine;
using Estimator.Engine.House;
using Estimator.Engine.Measures;

namespace Estimator.TestKit;

/// <summary>Small jobs whose answers can be worked out by hand: one room 16 by 12 ft under an 8 ft ceiling, the panel in its corner.</summary>
public static class SmallJobs
{
    public static Job OneRoom(RoomKind kind, params ReadOnlySpan<(DeviceKind Kind, int Count)> counts) => new()
    {
        Id = "small",
        Name = "Small job",
        Levels =
        [
            new Level
            {
                Id = "L1",
                Rooms =
                [
                    new Room
                    {
                        Id = "R1",
                        Name = "Room",
                        Kind = kind,
                        Size = new RectangleSize(Length.FromFeet(16), Length.FromFeet(12)),
                        At = new GridPoint(Length.Zero, Length.Zero),
                        Counts = [.. counts.ToArray().Select(c => new DeviceCount { Kind = c.Kind, Count = c.Count })],
                    },
                ],
                Openings = [new Opening { Id = "D1", Kind = OpeningKind.Door, Room = "R1", Wall = new WallSpot(1, Length.FromFeet(6)), Width = Length.FromInches(32) }],
            },
        ],
        Panels = [new Panel { Id = "P1", Room = "R1", Wall = new WallSpot(4, Length.FromFeet(1)), RatingA = Current.FromAmperes(100), Spaces = 20, Existing = true, Make = "m", Series = "s" }],
    };

    public static JobEstimate Estimate(Job job) => JobEstimate.Compute(job, Catalogues.Shipped);

    public static Job With(this Job job, Func<Room, Room> change) => job.WithRooms(change);
}
