using System.Collections.Immutable;
using Estimator.Engine;
using Estimator.Engine.Framing;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Estimator.Web.Jobs;

namespace Estimator.Web.Plans;

/// <summary>Draws the levels of an estimate.</summary>
public static class PlanDrawing
{
    /// <summary>The sheet of a level.</summary>
    public static PlanSheet Of(JobEstimate estimate, int level)
    {
        var frame = new SheetFrame(estimate.House);
        var framed = estimate.House.Levels[level];
        var runs = RunDrawing.Of(estimate, level, frame);
        var outlets = OutletDrawing.Of(estimate, level, frame);
        var panels = PanelDrawing.Of(estimate, level, frame);
        var rooms = Rooms(estimate.House, framed, frame, outlets);
        return new PlanSheet
        {
            Level = level,
            Name = LevelName(framed.Source),
            Frame = frame,
            Grid = SheetGrid.Of(frame),
            Rooms = rooms,
            Walls = WallDrawing.Of(estimate.House, framed, frame),
            Openings = OpeningDrawing.Of(estimate.House, level, frame),
            Outlets = outlets,
            Panels = panels,
            Runs = runs,
            Tags = TagPlacing.Of(runs, outlets, panels, frame),
            Findings = FindingPlacing.Of(estimate, level, frame, rooms, outlets),
        };
    }

    /// <summary>What people call a level.</summary>
    public static string LevelName(Level level) => level.Name.Length > 0 ? level.Name : level.Id;

    private static ImmutableArray<DrawnRoom> Rooms(FramedHouse house, FramedLevel level, SheetFrame frame, ImmutableArray<DrawnOutlet> outlets) =>
        [.. level.Rooms.Select(r => house.Rooms[r]).OrderByDescending(r => r.Source.Kind is RoomKind.Outdoors).ThenBy(r => r.Index).Select(r => Room(r, frame, outlets))];

    private static DrawnRoom Room(FramedRoom room, SheetFrame frame, ImmutableArray<DrawnOutlet> outlets)
    {
        ImmutableArray<SheetPoint> outline = [.. room.Corners.Select(frame.Point)];
        return new DrawnRoom(
            room.Source.Id, RoomActs.Name(room.Source), Size(outline), outline, [.. room.Holes.Select(h => h.Select(frame.Point).ToImmutableArray())],
            RoomLabels.Place(outline, RoomActs.Name(room.Source), frame, outlets), room.Source.Kind is RoomKind.Outdoors, room.Arranged);
    }

    private static string Size(ImmutableArray<SheetPoint> outline) =>
        $"{Inches(outline.Max(p => p.X) - outline.Min(p => p.X))} × {Inches(outline.Max(p => p.Y) - outline.Min(p => p.Y))}";

    private static Length Inches(double feet) => Length.FromSixteenths((long)Math.Round(feet * 12, MidpointRounding.AwayFromZero) * 16);
}
