using System.Collections.Immutable;
using Estimator.Engine.Findings;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Framing;

/// <summary>Finds the stretch of wall that each opening breaks, in each room that it touches.</summary>
internal static class OpeningPlacing
{
    internal static ImmutableArray<FramedOpening> Place(
        Job job, ImmutableArray<FramedRoom> rooms, ImmutableArray<FramedLevel> levels, Pose pose, List<Finding> findings)
    {
        var byId = rooms.GroupBy(r => r.Source.Id, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
        var placed = new List<FramedOpening>();
        foreach (var opening in levels.SelectMany(l => l.Source.Openings))
        {
            var (own, other) = (byId.GetValueOrDefault(opening.Room), opening.OtherRoom is { } id ? byId.GetValueOrDefault(id) : null);
            if (own is null)
            {
                continue;
            }

            var spot = opening.Wall is { } wall ? WallSpots.Of(own, wall, pose) : WallSpots.Nearest(own, Canonical(pose, opening.At ?? default));
            Judge(job, opening, [own, .. other is null ? Array.Empty<FramedRoom>() : [other]], WallSpots.PointAt(own, spot.Side, spot.Offset), pose, findings);
            placed.Add(Broken(opening, own, other, spot));
            if (other is not null)
            {
                placed.Add(Broken(opening, other, own, WallSpots.Nearest(other, WallSpots.PointAt(own, spot.Side, spot.Offset))));
            }
        }

        return [.. placed.OrderBy(o => o.Room).ThenBy(o => o.Side).ThenBy(o => o.From).ThenBy(o => o.To).ThenBy(o => o.Source.Kind)];
    }

    // An opening farther from a wall of its rooms than a wall is thick was drawn in the wrong place, or names the wrong room; one that is wider than its
    // wall takes all of it.
    private static void Judge(Job job, Opening opening, ImmutableArray<FramedRoom> rooms, PlanPoint spot, Pose pose, List<Finding> findings)
    {
        var thickest = (job.Practice.MaximumWallThickness ?? PracticeDefaults.MaximumWallThickness.Inches()).ToSixteenths();
        var point = opening.At is { } at ? Canonical(pose, at) : spot;
        foreach (var room in rooms)
        {
            var (side, offset) = WallSpots.Nearest(room, point);
            var away = WallSpots.PointAt(room, side, offset).StraightDistanceTo(point);
            var wall = Length.FromSixteenths(WallSpots.LengthOf(room, side));
            if (opening.Width > wall)
            {
                findings.Add(new Finding
                {
                    Code = "opening-wider-than-wall",
                    Severity = Severity.Advice,
                    Where = [opening.Id, room.Source.Id],
                    Text = $"Opening {opening.Id} is {opening.Width} wide and its wall of {room.Source.Id} {wall}; the whole wall was taken to be open. Correct the width or the place.",
                });
            }

            if (away > thickest)
            {
                findings.Add(new Finding
                {
                    Code = "opening-off-wall",
                    Severity = Severity.Advice,
                    Where = [opening.Id, room.Source.Id],
                    Text = $"Opening {opening.Id} lies {Length.FromSixteenths(away)} from the nearest wall of {room.Source.Id}; it was taken to be there. Move it, or name the room it opens to.",
                });
            }
        }
    }

    private static FramedOpening Broken(Opening opening, FramedRoom room, FramedRoom? other, (int Side, int Offset) spot)
    {
        var length = WallSpots.LengthOf(room, spot.Side);
        var half = opening.Width.ToSixteenths() / 2;
        return new FramedOpening
        {
            Source = opening,
            Room = room.Index,
            OtherRoom = other?.Index ?? -1,
            Side = spot.Side,
            From = Math.Clamp(spot.Offset - half, 0, length),
            To = Math.Clamp(spot.Offset - half + opening.Width.ToSixteenths(), 0, length),
            Sill = (opening.Sill ?? Length.Zero).ToSixteenths(),
            Head = (opening.Head ?? PracticeDefaults.DoorHead.Inches()).ToSixteenths(),
        };
    }

    private static PlanPoint Canonical(Pose pose, GridPoint at) => pose.ToCanonical(new PlanPoint(at.X.ToSixteenths(), at.Y.ToSixteenths()));
}
