using Estimator.Documents.Explanations;
using Estimator.Documents.Workbooks;
using Estimator.Engine;
using Estimator.Engine.Explanations;
using Estimator.Engine.Labor;

namespace Estimator.Documents.Labor;

/// <summary>Hours by item and phase. Changed hours of a unit, or a changed factor, change the price of the job.</summary>
internal static class LaborSheet
{
    internal const string Name = "Labor";

    /// <summary>Name of the cell that holds the hours.</summary>
    internal const string HoursName = "LaborHours";

    private const int First = 5;

    internal static void Write(WorkbookDraft draft, JobEstimate estimate, LiveFormula formulas, ExplanationIndex index)
    {
        var page = draft.Add(Name);
        var styles = page.Styles;
        var labor = estimate.Labor;
        page.Columns(19, 46, 9, 6, 10, 9, 9, 32, 30, 9);
        page.Put(1, 1, $"Labor: {estimate.House.Job.Name}", styles.Title);
        page.Put(2, 1, $"{Cautions.Hours} Copper figures may be changed and the price follows.", styles.Subtitle);

        var factors = Tables(labor.Page).Where(n => n.Rule.StartsWith("labor_factors:", StringComparison.Ordinal)).ToList();
        var last = First + labor.Lines.Length - 1;
        Phases(page, labor, formulas, index, last);
        Factors(page, factors, formulas, index, last + labor.ByPhase.Count + 5);

        page.Heads(First - 1, "Phase", "Item", ">Quantity", "  Unit", ">Hours for so many units", ">So many units", ">Hours", "  The hours rest on", "  Factors applied", ">Explained in row");
        var units = estimate.Takeoff.Lines.DistinctBy(l => l.ItemId).ToDictionary(l => l.ItemId, l => l.Unit, StringComparer.Ordinal);
        var row = First;
        foreach (var line in labor.Lines.OrderBy(l => l.Phase))
        {
            Line(page, row++, line, units[line.ItemId], estimate.Book, formulas, index);
        }

        page.Limit(First, last, 5);
        page.Print(landscape: true, headingRows: First - 1, repeatFrom: First - 1);
    }

    private static void Phases(SheetPage page, LaborPlan labor, LiveFormula formulas, ExplanationIndex index, int last)
    {
        var styles = page.Styles;
        var row = last + 2;
        page.Put(row, 1, "Hours by phase", styles.Section);
        page.Fill(row++, 2, 10, styles.Section);
        foreach (var (phase, hours) in labor.ByPhase)
        {
            page.Fill(row, 2, 10, styles.Text);
            page.Put(row, 1, PhaseWords.Of(phase), styles.Text);
            page.Live(row, 7, $"SUMIF(A{First}:A{last},A{row},G{First}:G{last})", hours.Value, styles.Number(SheetStyles.Hours));
            page.Explained(row, 10, index[hours.Node]);
            formulas.Holds(hours.Node, page.At(row, 7));
            row++;
        }

        page.Fill(row, 2, 10, styles.TotalText);
        page.Put(row, 1, "Hours of the job", styles.TotalText);
        page.Live(row, 7, formulas.Of(labor.Total.Node, Name), labor.Total.Value, styles.Number(SheetStyles.Hours, SheetStyles.Tone.Total));
        page.Explained(row, 10, index[labor.Total.Node], total: true);
        page.CallIt(HoursName, row, 7);
        formulas.Holds(labor.Total.Node, HoursName);
        if (labor.WaitDays is { } days)
        {
            page.Put(row + 1, 1, FormattableString.Invariant($"Waiting for the utility takes {days.Value:0} days on the calendar; no hours are charged for them."), styles.Subtitle);
        }
    }

    private static void Factors(SheetPage page, List<ExplanationNode> factors, LiveFormula formulas, ExplanationIndex index, int row)
    {
        if (factors.Count == 0)
        {
            return;
        }

        page.Put(row, 1, "Factors of this job", page.Styles.Section);
        page.Fill(row, 2, 10, page.Styles.Section);
        page.Limit(row + 1, row + factors.Count, 7);
        foreach (var factor in factors)
        {
            row++;
            page.Fill(row, 2, 10, page.Styles.Text);
            page.Put(row, 1, factor.Label, page.Styles.OneLine);
            page.Input(row, 7, factor.Value, SheetStyles.Plain);
            page.Put(row, 8, FigureText.UnitWords(factor.Unit) is { Length: > 0 } unit ? unit : "times", page.Styles.Soft);
            page.Explained(row, 10, index[factor.Ref]);
            formulas.Holds(factor.Ref, page.At(row, 7));
        }
    }

    private static void Line(SheetPage page, int row, LaborLine line, string unit, ExplanationBook book, LiveFormula formulas, ExplanationIndex index)
    {
        var styles = page.Styles;
        page.Fill(row, 5, 6, styles.Text);
        page.Put(row, 1, PhaseWords.Of(line.Phase), styles.Text);
        page.Put(row, 2, line.Description, styles.Text);
        page.Put(row, 3, line.Quantity.Value, styles.Number(unit == "foot" ? SheetStyles.Tenths : SheetStyles.Whole));
        page.Put(row, 4, unit == "foot" ? "ft" : "ea", styles.Soft);
        var catalogue = Leaves(book, line.Hours.Node).Where(n => n.Rule.StartsWith("labor.csv:", StringComparison.Ordinal)).DistinctBy(n => n.Ref).ToList();
        foreach (var leaf in catalogue)
        {
            if (IsPer(leaf))
            {
                page.Put(row, 6, leaf.Value, styles.Number(SheetStyles.Plain));
            }
            else
            {
                page.Input(row, 5, leaf.Value, SheetStyles.Plain);
            }
        }

        if (catalogue.Count == 1)
        {
            page.Put(row, 6, 1, styles.Number(SheetStyles.Plain));
        }

        page.Live(row, 7, formulas.Of(line.Hours.Node, Name, Here), line.Hours.Value, styles.Number(SheetStyles.Hours));
        page.Put(row, 8, line.Basis, styles.Soft);
        page.Put(row, 9, LaborWords.Of(line.Factors), styles.Soft);
        page.Explained(row, 10, index[line.Hours.Node]);

        string? Here(ExplanationNode node) =>
            node.Ref == line.Quantity.Node ? $"C{row}"
            : node.Rule.StartsWith("labor.csv:", StringComparison.Ordinal) ? $"{(IsPer(node) ? "F" : "E")}{row}"
            : null;
    }

    private static bool IsPer(ExplanationNode leaf) => leaf.Rule.EndsWith(".per", StringComparison.Ordinal);

    private static List<ExplanationNode> Tables(ExplanationPage page) =>
        [.. Enumerable.Range(0, page.Count).Select(i => page[i]).Where(n => n.Operation is Operation.Row)];

    private static IEnumerable<ExplanationNode> Leaves(ExplanationBook book, NodeRef at)
    {
        var node = book[at];
        return node.Operation is Operation.Row ? [node] : node.Inputs.Where(i => i.Page == at.Page).SelectMany(i => Leaves(book, i));
    }
}
