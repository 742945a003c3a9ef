using System.Globalization;
using Estimator.Documents.Boxes;
using Estimator.Documents.House;
using Estimator.Documents.Papers;
using Estimator.Engine;
using Estimator.Engine.Wiring.Boxes;
using Estimator.Engine.Wiring.Joints;
using Estimator.Engine.Wiring.Routing;
using PdfSharp.Drawing;

namespace Estimator.Documents.Crew;

/// <summary>A box seen from the front, drawn on paper: cables at the left, splices with their count, screws and leads at the right.</summary>
internal sealed class BoxCard
{
    private const double RowScale = 0.55;
    private const double Head = 25;
    private const double Foot = 2;
    private const double Pad = 6;
    private const double Colours = 80;
    private const double Dots = 130;
    private const double Screws = 172;
    private const double Labels = 179;

    private static readonly PaperLook Tiny = new(6.5, false, PaperLook.Dark);
    private static readonly PaperLook TinySoft = new(6.5, false, PaperLook.SoftInk);
    private static readonly PaperLook TinyBold = new(6.5, true, PaperLook.Dark);
    private static readonly XColor White = XColor.FromArgb(0xFF, 0xFF, 0xFF);

    private readonly JobEstimate _estimate;
    private readonly CrewLabels _labels;
    private readonly PaperPen _pen;
    private readonly int _index;
    private readonly double _width;
    private readonly BoxDrawing _drawing;
    private readonly List<string> _cautions;

    internal BoxCard(JobEstimate estimate, CrewLabels labels, PaperPen pen, int index, double width)
    {
        (_estimate, _labels, _pen, _index, _width) = (estimate, labels, pen, index, width);
        _drawing = BoxDrawing.Of(estimate, Box);
        _cautions = [.. BoxWords.Cautions(estimate, Box).SelectMany(c => pen.Wrap(c, TinySoft, width - 2 * Pad))];
    }

    internal double Height => Head + _drawing.Height * RowScale + _cautions.Count * Tiny.Line + Foot + Pad;

    private Box Box => _estimate.Wiring.Boxes[_index];

    internal void Draw(PaperPage page, double left, double top)
    {
        page.Frame(left, top, _width, Height - Pad, PaperLook.Hairline);
        page.Text(left + Pad, top + 3, _labels.Box(_index), PaperLook.Part);
        var after = left + Pad + _pen.Width(_labels.Box(_index), PaperLook.Part) + 6;
        page.Text(after, top + 4.5, _pen.OneLine(BoxWords.Title(_estimate, Box), Tiny, left + _width - Pad - after), Tiny);
        page.Text(left + Pad, top + 15, _pen.OneLine(Kind(), TinySoft, _width - 2 * Pad), TinySoft);
        page.Band(left + Colours + 18, top + Head, Screws - Colours - 30, _drawing.Height * RowScale - 2, PaperLook.Sunk);
        Cables(page, left, top + Head);
        Devices(page, left, top + Head);
        Joints(page, left, top + Head);
        var y = top + Head + _drawing.Height * RowScale;
        foreach (var line in _cautions)
        {
            page.Text(left + Pad, y, line, TinySoft);
            y += Tiny.Line;
        }
    }

    private string Kind() => Box.Item is { } item
        ? string.Create(CultureInfo.InvariantCulture, $"{Box.Gangs}-gang, {item.Volume.ToCubicInches():0.0} cu in, {Box.RequiredVolume.Value:0.00} needed; circuit {_labels.Circuit(Box.Circuit)}")
        : $"{(Box.Fits ? "the luminaire's own wiring box" : "no box of the catalogue holds it")}; circuit {_labels.Circuit(Box.Circuit)}";

    private void Cables(PaperPage page, double left, double top)
    {
        foreach (var (run, y) in _drawing.Cables)
        {
            page.Text(left + Pad, Line(top, y), _pen.OneLine(CableWords(_estimate.Wiring.Runs[run]), TinyBold, Colours + 14 - Pad), TinyBold);
        }

        foreach (var (end, joint, y) in _drawing.Ends)
        {
            page.TextEnding(left + Colours, Line(top, y), end.Colour.ToString().ToLowerInvariant() + (Marked(end) ? ", marked" : ""), Tiny);
            var (from, to) = (top + y * RowScale, top + _drawing.Joints[joint].Y * RowScale);
            if (end.Colour is InsulationColour.White)
            {
                page.Wire(left + Colours + 3, from, left + Dots, to, PaperLook.SoftInk, 1.8);
            }

            page.Wire(left + Colours + 3, from, left + Dots, to, Ink(end.Colour), 1.2);
        }
    }

    private string CableWords(Run run)
    {
        var far = run.To == _index ? run.From : run.To;
        return $"{RunWords.Cable(run.Cable)} {(run.To == _index ? "from" : "to")} {(far < 0 ? "the panel" : _labels.Box(far))}";
    }

    private void Devices(PaperPage page, double left, double top)
    {
        foreach (var (device, y) in _drawing.Devices)
        {
            page.Text(left + Screws - 2, Line(top, y), _pen.OneLine(BoxWords.Device(_estimate, Box, device), TinyBold, _width - Screws - 2), TinyBold);
        }

        foreach (var (terminal, joint, y) in _drawing.Terminals)
        {
            page.Wire(left + Dots, top + _drawing.Joints[joint].Y * RowScale, left + Screws, top + y * RowScale, PaperLook.SoftInk, 0.6);
            page.Disc(left + Screws, top + y * RowScale, 2, White, PaperLook.Dark);
            page.Text(left + Labels, Line(top, y), _pen.OneLine(BoxWords.Terminal(terminal), Tiny, _width - Labels - 2), Tiny);
        }
    }

    private void Joints(PaperPage page, double left, double top)
    {
        foreach (var (joint, y) in _drawing.Joints)
        {
            page.Disc(left + Dots, top + y * RowScale, joint.Connector ? 4.6 : 1.2, joint.Connector ? White : PaperLook.Dark, PaperLook.Dark);
            if (joint.Connector)
            {
                var count = joint.Conductors.ToString(CultureInfo.InvariantCulture);
                page.Text(left + Dots - _pen.Width(count, TinyBold) / 2, Line(top, y), count, TinyBold);
            }
        }
    }

    private bool Marked(ConductorEnd end) => _estimate.Wiring.Runs[end.Run].Conductors.First(c => c.Colour == end.Colour).ReMarked;

    private static double Line(double top, int y) => top + y * RowScale - Tiny.Ascent + 2.4;

    private static XColor Ink(InsulationColour colour) => colour switch
    {
        InsulationColour.Black => PaperLook.Dark,
        InsulationColour.Red => PaperLook.Red,
        InsulationColour.White => White,
        InsulationColour.Bare => PaperLook.Copper,
        _ => throw new ArgumentOutOfRangeException(nameof(colour), colour, "There is no such colour."),
    };
}
