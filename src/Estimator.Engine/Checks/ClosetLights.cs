using Estimator.Engine.Findings;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Engine.Rules;

namespace Estimator.Engine.Checks;

/// <summary>Lights of closets keep clear of what is stored there.</summary>
/// <remarks>
/// A shelf of usual depth is taken along every wall without a door; surface lights are taken as enclosed LED. Source: NEC 410.16; the depth of a shelf from memory.
/// </remarks>
internal static class ClosetLights
{
    internal static IEnumerable<Finding> Judge(CheckContext context)
    {
        if (context.Rule("closet-light") is not { } rule)
        {
            return [];
        }

        return context.House.Rooms.Where(r => r.Source.Kind is RoomKind.Closet)
            .SelectMany(r => context.In(r.Index).Where(d => d.Kind is DeviceKind.CeilingLight or DeviceKind.RecessedLight).SelectMany(d =>
            {
                var clear = (d.Kind is DeviceKind.RecessedLight ? PlacingLimits.ClosetRecessed : PlacingLimits.ClosetSurface).Inches();
                var away = Enumerable.Range(0, r.Corners.Length).Where(s => !context.House.Openings.Any(o => o.Room == r.Index && o.Side == s && o.BreaksFloorLine))
                    .Select(s => FromWall(r, s, d.Place.Spot)).DefaultIfEmpty(int.MaxValue).Min();
                var shelf = PlacingLimits.ClosetShelf.Inches();
                return context.Ask(
                    rule, away >= (clear + shelf).ToSixteenths(),
                    () => $"{context.CalledAtStart(d)} hangs {Length.FromSixteenths(away)} from a wall; with a shelf of {shelf} it is nearer than {clear} to what is stored. {(d.Kind is DeviceKind.RecessedLight ? "Move it to the middle, or over the door." : "Take a recessed one, which needs less, or one listed for storage space.")}",
                    [d.Id, r.Source.Id], Severity.Advice);
            }));
    }

    private static int FromWall(FramedRoom room, int side, PlanPoint spot)
    {
        var (a, b, length) = (room.Corners[side], room.Corners[(side + 1) % room.Corners.Length], WallSpots.LengthOf(room, side));
        return length == 0 ? int.MaxValue : (int)Math.Abs(((long)(b.X - a.X) * (spot.Y - a.Y) - (long)(b.Y - a.Y) * (spot.X - a.X)) / length);
    }
}
