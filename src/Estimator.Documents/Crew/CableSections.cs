using System.Globalization;
using Estimator.Documents.Papers;
using Estimator.Documents.Purchase;
using Estimator.Engine;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase;

namespace Estimator.Documents.Crew;

/// <summary>The sections of the crew's paper on cable: what to pull, and how to cut it.</summary>
internal sealed class CableSections(Paper paper, JobEstimate estimate, CrewLabels labels)
{
    internal void PullList()
    {
        paper.SectionOnNewPage("Pull list", landscape: true);
        paper.Say("Each run is one piece; make-up, slack and tolerance are in the length. If the way on site differs, measure first.", PaperLook.Soft);
        var runs = PulledRun.Of(estimate, labels).ToList();
        var sums = new PaperTable(new("Cable", 3), PaperColumn.Figures("Runs", 1), PaperColumn.Figures("Length, ft in", 2));
        foreach (var cable in runs.GroupBy(r => r.Cable).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            sums.Row(cable.Key, PaperFigures.Whole(cable.Count()), Sum(cable).ToString());
        }

        sums.Total("All runs", PaperFigures.Whole(runs.Count), Sum(runs).ToString());
        paper.Table(sums);
        var table = new PaperTable(PaperColumn.Tick("", 0.35), new("From", 3.3), new("To", 3.3), new("Cable", 1.1), PaperColumn.Figures("Length, ft in", 1.5), new("Carries", 1.7), new("Way", 2.8));
        foreach (var circuit in runs.GroupBy(r => (r.Circuit, r.Name)))
        {
            table.Band($"{circuit.Key.Circuit}  {circuit.Key.Name}");
            foreach (var run in circuit)
            {
                table.Row("", run.From, run.To, run.Cable, run.Length.ToString(), run.Carries, run.Way);
            }
        }

        paper.Table(table);
    }

    internal void Cuts()
    {
        paper.SectionOnNewPage("Cut plan", landscape: true);
        paper.Say("In this order. Trim the free end square before each cut; marks count from the free end of the whole coil.", PaperLook.Soft);
        var (names, runs) = (estimate.Purchase.Lines.DistinctBy(l => l.ItemId).ToDictionary(l => l.ItemId, l => l.Description, StringComparer.Ordinal), PulledRun.Of(estimate, labels).DistinctBy(r => r.Run).ToDictionary(r => r.Run, StringComparer.Ordinal));
        var table = new PaperTable(PaperColumn.Tick("", 0.35), PaperColumn.Figures("Cut", 0.5), PaperColumn.Figures("Length, ft in", 1.4), PaperColumn.Figures("Cut at mark", 1.4), PaperColumn.Figures("Left on coil", 1.4), new("From", 3.6), new("To", 3.6));
        foreach (var cut in estimate.Purchase.Cuts)
        {
            for (var c = 0; c < cut.Coils.Length; c++)
            {
                Coil(table, $"{names[cut.ItemId]}, coil {c + 1} of {cut.Coils.Length}", cut, cut.Coils[c], runs);
            }

            foreach (var piece in cut.TooLong)
            {
                table.Band($"{names[cut.ItemId]}: {piece.Length} for {piece.Run} is longer than any coil");
            }
        }

        paper.Table(table);
    }

    // Of the lengths as they are printed, to the sixteenth of an inch, so that the list adds up.
    private static Length Sum(IEnumerable<PulledRun> runs) => Length.FromSixteenths(runs.Sum(r => (long)r.Length.ToSixteenths()));

    private static void Coil(PaperTable table, string title, CutPlan cut, CutCoil coil, Dictionary<string, PulledRun> runs)
    {
        table.Band(string.Create(CultureInfo.InvariantCulture, $"{title}: {CutWords.Coil(coil)}, {coil.Pieces.Length} pieces, {coil.Left} stays on it{(cut.IsKept(coil) ? ", keep" : "")}"));
        var marks = coil.Marks;
        for (var i = 0; i < coil.Pieces.Length; i++)
        {
            var piece = coil.Pieces[i];
            var run = runs.GetValueOrDefault(piece.Run[(piece.Run.IndexOf(": ", StringComparison.Ordinal) + 2)..]);
            table.Row("", PaperFigures.Whole(i + 1), piece.Length.ToString(), marks[i].ToString(), (coil.Length - marks[i]).ToString(), run?.From ?? "", run?.To ?? piece.Run);
        }
    }
}
