using System.Collections.Immutable;
using Estimator.Engine;
using Estimator.Engine.Findings;
using Estimator.Web.Findings;

namespace Estimator.Web.Plans;

/// <summary>Finds where on a sheet each numbered finding belongs: at the device, box or panel that it names, else in its room.</summary>
internal static class FindingPlacing
{
    private const double OffDots = 15;
    private const double ApartDots = 20;

    private static readonly ImmutableArray<(int X, int Y)> Corners = [(1, 1), (-1, 1), (-1, -1), (1, -1)];

    internal static ImmutableArray<DrawnFinding> Of(JobEstimate estimate, int level, SheetFrame frame, ImmutableArray<DrawnRoom> rooms, ImmutableArray<DrawnOutlet> outlets)
    {
        var drawn = new List<DrawnFinding>();
        foreach (var (finding, index) in FindingList.Shown(estimate.Findings).Select((f, i) => (f, i)))
        {
            if (Place(estimate, finding, level, frame, rooms, outlets) is { } at)
            {
                drawn.Add(new DrawnFinding(index + 1, finding, Free(at, drawn, frame)));
            }
        }

        return [.. drawn];
    }

    private static SheetPoint? Place(
        JobEstimate estimate, Finding finding, int level, SheetFrame frame, ImmutableArray<DrawnRoom> rooms, ImmutableArray<DrawnOutlet> outlets)
    {
        SheetPoint Beside(SheetPoint spot) => Corners.Select(c => new SheetPoint(spot.X + c.X * OffDots * frame.Dot, spot.Y + c.Y * OffDots * frame.Dot))
            .OrderByDescending(p => rooms.Any(r => RoomLabels.Holds(r.Outline, p))).First();
        if (outlets.FirstOrDefault(o => finding.Where.Contains(o.Id)) is { } outlet)
        {
            return Beside(outlet.At);
        }

        var boxes = estimate.Wiring.Boxes;
        var box = boxes.FirstOrDefault(b => finding.Where.Contains(b.Id))
            ?? estimate.Wiring.Circuits.Where(c => finding.Where.Contains(c.Id) && c.Boxes.Length > 0).Select(c => boxes[c.Boxes[0]]).FirstOrDefault();
        if (box is not null)
        {
            return box.Place.Level == level ? Beside(frame.Point(box.Place.Spot)) : null;
        }

        if (estimate.Layout.Panels.FirstOrDefault(p => finding.Where.Contains(p.Source.Id)) is { } panel)
        {
            return panel.Place.Level == level ? Beside(frame.Point(panel.Place.Spot)) : null;
        }

        return rooms.FirstOrDefault(r => finding.Where.Contains(r.Id)) is { } room ? new SheetPoint(room.Label.X, room.Label.Y + 2 * OffDots * frame.Dot) : null;
    }

    private static SheetPoint Free(SheetPoint at, List<DrawnFinding> drawn, SheetFrame frame)
    {
        var (left, apart) = (at.X, ApartDots * frame.Dot);
        while (drawn.Any(d => d.At.DistanceTo(at) < apart * 0.99))
        {
            at = at.X + apart <= frame.Width ? new SheetPoint(at.X + apart, at.Y) : new SheetPoint(left, at.Y + apart);
        }

        return at;
    }
}
