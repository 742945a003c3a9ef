using System.Collections.Immutable;
using Estimator.Engine;
using Estimator.Engine.Framing;
using Estimator.Engine.Layout;
using Estimator.Web.Figures;

namespace Estimator.Web.Plans;

/// <summary>Draws panels as filled boxes lying in the wall line.</summary>
internal static class PanelDrawing
{
    // A flush panel fills a stud bay; drawn so, since no job states a cabinet's size.
    private const double HalfWidth = 0.6;
    private const double Depth = 0.33;

    private const double LetterDots = 5.6;
    private const double OffDots = 16;

    internal static ImmutableArray<DrawnPanel> Of(JobEstimate estimate, int level, SheetFrame frame) =>
        [.. estimate.Layout.Panels.Where(p => p.Place.Level == level).Select(p => Draw(estimate.House, p, frame))];

    private static DrawnPanel Draw(FramedHouse house, LaidPanel panel, SheetFrame frame)
    {
        var spot = frame.Point(panel.Place.Spot);
        var outward = panel.Place.Mount is Mount.Wall && panel.Place.Side >= 0 ? WallDrawing.Outward(house.Rooms[panel.Place.Room], panel.Place.Side, frame) : new SheetPoint(0, 1);
        var along = new SheetPoint(-outward.Y, outward.X);
        var (a, b) = (spot.Along(along, -HalfWidth), spot.Along(along, HalfWidth));
        var name = panel.Source.Name.Length > 0 ? panel.Source.Name : panel.Source.Id;
        var label = $"{American.Number(panel.Source.RatingA.ToAmperes())} A, {American.Count(panel.Source.Spaces, "space")}";
        var width = label.Length * LetterDots * frame.Dot;
        var off = OffDots * frame.Dot + Math.Abs(outward.X) * width / 2;
        var at = new SheetPoint(spot.X - outward.X * off, spot.Y - outward.Y * off);
        return new DrawnPanel(
            panel.Source.Id, label, name,
            [a.Along(outward, Depth / 2), b.Along(outward, Depth / 2), b.Along(outward, -Depth / 2), a.Along(outward, -Depth / 2)], spot,
            at with { X = Math.Clamp(at.X, Math.Min(width / 2, frame.Width / 2), Math.Max(frame.Width - width / 2, frame.Width / 2)) }, width);
    }
}
