using System.Collections.Immutable;
using System.Globalization;

namespace Estimator.Web.Plans;

/// <summary>Finds a place for each circuit's number along its home run, or another of its runs, where no other number stands yet.</summary>
internal static class TagPlacing
{
    private const double HeightDots = 15;
    private const double LetterDots = 7;
    private const double PaddingDots = 8;
    private const int Tries = 9;

    // A sign's drawn part of its field; what a tag would rather cover, if it must: a sign, then a label, then another tag.
    private const double SignPart = 0.7;
    private const int LabelWeight = 10;
    private const int TagWeight = 100;

    internal static ImmutableArray<CircuitTag> Of(ImmutableArray<DrawnRun> runs, ImmutableArray<DrawnOutlet> outlets, ImmutableArray<DrawnPanel> panels, SheetFrame frame)
    {
        var signs = outlets.Select(o => new CircuitTag(o.Circuit, "", o.At, frame.Sign * SignPart, frame.Sign * SignPart)).ToList();
        var labels = panels.Select(p => new CircuitTag(-1, p.Label, p.LabelAt, p.LabelWidth, HeightDots * frame.Dot)).ToList();
        int Covered(CircuitTag tag, List<CircuitTag> tags) => tags.Count(tag.Covers) * TagWeight + labels.Count(tag.Covers) * LabelWeight + signs.Count(tag.Covers);
        var tags = new List<CircuitTag>();
        foreach (var circuit in runs.GroupBy(r => r.Circuit))
        {
            var candidates = circuit.OrderByDescending(r => r.HomeRun).SelectMany(Spots).Select(at => Tag(circuit.Key, at, frame)).ToList();
            tags.Add(candidates.MinBy(c => Covered(c, tags))!);
        }

        return [.. tags];
    }

    private static CircuitTag Tag(int circuit, SheetPoint at, SheetFrame frame)
    {
        var text = (circuit + 1).ToString(CultureInfo.InvariantCulture);
        return new CircuitTag(circuit, text, at, (text.Length * LetterDots + PaddingDots) * frame.Dot, HeightDots * frame.Dot);
    }

    // Along the longest line first, from its middle outwards.
    private static IEnumerable<SheetPoint> Spots(DrawnRun run)
    {
        var lines = run.Parts.SelectMany(p => p.Zip(p.Skip(1))).OrderByDescending(s => s.First.DistanceTo(s.Second)).ToList();
        return lines.Count == 0 ? [run.Parts[0][0]] : lines.SelectMany(s => Enumerable.Range(0, Tries).Select(i =>
        {
            var step = (i + 1) / 2 * (i % 2 == 0 ? 1 : -1);
            var part = 0.5 + step / (Tries + 1.0);
            return new SheetPoint(s.First.X + (s.Second.X - s.First.X) * part, s.First.Y + (s.Second.Y - s.First.Y) * part);
        }));
    }
}
