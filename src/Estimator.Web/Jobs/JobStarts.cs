using System.Collections.Immutable;
using Estimator.Engine.House;
using Estimator.Engine.JobFiles;
using Estimator.Engine.Measures;
using Estimator.Web.Start;

namespace Estimator.Web.Jobs;

/// <summary>What a job can start from: nothing, or one of the samples.</summary>
public static class JobStarts
{
    private const int UsualService = 200;
    private const int UsualSpaces = 40;

    /// <summary>The samples: what they are and the name of their file.</summary>
    public static ImmutableArray<(string Title, string Name)> Samples { get; } =
    [
        ("Basement finish", "basement-finish"),
        ("Two-storey house", "two-storey-house"),
    ];

    /// <summary>A sample job.</summary>
    /// <exception cref="InvalidOperationException">The program lacks the sample, or it is not in order.</exception>
    public static Job Sample(string name) => JobFile.Read(Resources.Read($"samples/{name}.json"), name).Job;

    /// <summary>A job with one level and a new panel in a room that it can hang in; everything else is to be stated.</summary>
    public static Job Blank(string name) => new()
    {
        Id = $"job-{Guid.NewGuid():N}"[..12],
        Name = name,
        Levels =
        [
            new Level
            {
                Id = "L1",
                Name = "First level",
                Rooms = [new Room { Id = "R1", Name = "Utility room", Kind = RoomKind.Utility, Size = new RectangleSize(Length.FromFeet(8), Length.FromFeet(8)) }],
            },
        ],
        Panels = [new Panel { Id = "P1", Name = "Main panel", Room = "R1", Wall = new WallSpot(1, Length.FromFeet(4)), RatingA = Current.FromAmperes(UsualService), Spaces = UsualSpaces }],
    };
}
