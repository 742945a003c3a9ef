using System.Collections.Immutable;
using Estimator.Engine.Explanations;
using Estimator.Engine.Findings;
using Estimator.Engine.House;

namespace Estimator.Engine.Framing;

/// <summary>The house in canonical pose: turned, mirrored and ordered so that no choice depends on how the user drew or listed it.</summary>
/// <remarks>All points are whole sixteenths of an inch in the canonical pose; <see cref="Pose"/> leads back to the user's grid.</remarks>
public sealed record FramedHouse
{
    /// <summary>The job it was made from.</summary>
    public required Job Job { get; init; }

    /// <summary>How the canonical pose lies on the user's grid.</summary>
    public required Pose Pose { get; init; }

    /// <summary>Levels, lowest first.</summary>
    public required ImmutableArray<FramedLevel> Levels { get; init; }

    /// <summary>Rooms in canonical order; a room's index is its place here.</summary>
    public required ImmutableArray<FramedRoom> Rooms { get; init; }

    /// <summary>Openings in canonical order.</summary>
    public required ImmutableArray<FramedOpening> Openings { get; init; }

    /// <summary>What was assumed or is wrong with the geometry.</summary>
    public ImmutableArray<Finding> Findings { get; init; } = [];

    /// <summary>Page of the explanation book that holds the facts of the user's figures.</summary>
    public required ExplanationPage Page { get; init; }

    /// <summary>The building of a room by its index in the job; -1 for the house.</summary>
    /// <param name="room">Index of the room.</param>
    public int BuildingOf(int room)
    {
        var building = Job.Buildings.Length - 1;
        while (building >= 0 && Job.Buildings[building].Id != Rooms[room].Source.Building)
        {
            building--;
        }

        return building;
    }
}
