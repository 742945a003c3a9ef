using System.Globalization;
using Estimator.Documents.Workbooks;
using Estimator.Engine.Explanations;

namespace Estimator.Documents.Explanations;

/// <summary>The last sheet: how each figure was found, down to what was stated and the rows that were read.</summary>
internal static class ExplanationSheet
{
    internal const string Name = "Explanations";

    internal static void Write(WorkbookDraft draft, ExplanationIndex index)
    {
        var page = draft.Add(Name);
        var styles = page.Styles;
        page.Columns(5.5, 40, 11, 6, 30, 19, 38, 17, 8);
        page.Put(1, 1, "How each figure was found", styles.Title);
        page.Put(2, 1, "Figures as estimated: what is changed on other sheets is not explained here. A row names the rows that it was made from; the numbers are those of the rows.", styles.Subtitle);
        page.Heads(ExplanationIndex.FirstRow - 1, ">Row", "Figure", ">Value", "Unit", "Made by", "Rule", "Stated or read at", "Article or section", "Node");
        for (var i = 0; i < index.Nodes.Count; i++)
        {
            Row(page, index, ExplanationIndex.FirstRow + i, index.Nodes[i].Node, index.Nodes[i].Depth);
        }

        page.Print(landscape: true, headingRows: ExplanationIndex.FirstRow - 1, repeatFrom: ExplanationIndex.FirstRow - 1);
    }

    private static void Row(SheetPage page, ExplanationIndex index, int row, ExplanationNode node, int depth)
    {
        var styles = page.Styles;
        var leaf = node.Operation is Operation.Given or Operation.Row or Operation.Constant;
        page.Put(row, 1, row, styles.Number(SheetStyles.Plain));
        page.Put(row, 2, node.Label, styles.Steps[Math.Min(depth, styles.Steps.Length - 1)]);
        if (node.Unit is Unit.Length)
        {
            page.Put(row, 3, FigureText.Of(node), styles.Number("@"));
        }
        else
        {
            page.Put(row, 3, node.Value, styles.Number("#,##0.######"));
        }

        page.Put(row, 4, FigureText.UnitWords(node.Unit), styles.Soft);
        page.Put(row, 5, MadeBy(node, index), styles.Text);
        page.Put(row, 6, leaf ? "" : node.Rule, styles.Soft);
        page.Put(row, 7, node.Operation switch { Operation.Given => node.Rule, Operation.Row => RowSources.Of(node.Rule), _ => "" }, styles.Text);
        page.Put(row, 8, node.Operation is Operation.Row ? RowSources.ArticleOf(node.Rule) : "", styles.Text);
        page.Put(row, 9, string.Create(CultureInfo.InvariantCulture, $"{node.Ref.Page}.{node.Ref.Index}"), styles.Soft);
    }

    private static string MadeBy(ExplanationNode node, ExplanationIndex index)
    {
        var rows = node.Inputs.Select(i => index[i]).ToArray();
        return node.Operation switch
        {
            Operation.Given => "stated in the job",
            Operation.Row => "read from a table",
            Operation.Constant => "counted",
            Operation.Sum when rows.Length == 0 => "nothing to add: zero",
            Operation.Sum => $"sum of {Rows(rows)}",
            Operation.Difference => $"row {rows[0]} less {Rows(rows[1..])}",
            Operation.Product => $"product of {Rows(rows)}",
            Operation.Quotient => $"row {rows[0]} divided by row {rows[1]}",
            Operation.PercentOf => $"row {rows[1]} percent of row {rows[0]}",
            Operation.Minimum => $"least of {Rows(rows)}",
            Operation.Maximum => $"greatest of {Rows(rows)}",
            Operation.Count => $"number of {Rows(rows)}",
            Operation.Because => rows.Length > 1 ? $"row {rows[0]}, because of {Rows(rows[1..])}" : $"row {rows[0]}",
            Operation.RoundUp => $"row {rows[0]} rounded up to a multiple of row {rows[1]}",
            Operation.RoundDown => $"row {rows[0]} rounded down to a multiple of row {rows[1]}",
            Operation.RoundNearest => $"row {rows[0]} rounded to a multiple of row {rows[1]}",
            Operation.InFeet => $"row {rows[0]} in feet",
            Operation.Apart => $"distance between {Rows(rows)}",
            Operation.SquareDistance => $"square distance of {Rows(rows)} (x, y, x, y)",
            Operation.StraightDistance => $"straight distance of {Rows(rows)} (x, y, x, y)",
            Operation.PartWay => $"from row {rows[0]} to row {rows[1]}, by row {rows[2]} of row {rows[3]}",
            Operation.TrianglePercentile => $"row {rows[0]} percent of a triangular distribution stay below; least, likeliest, most: {Rows(rows[1..])}",
            Operation.DrawnPercentile => $"row {rows[0]} percent of as many seeded draws as row {rows[1]} says stay below; stream, share, least, likeliest, most of each factor: {Rows(rows[2..])}",
            Operation.DrawnShare => $"share of as many seeded draws as row {rows[1]} says that stay at or below row {rows[0]}; stream, share, least, likeliest, most of each factor: {Rows(rows[2..])}",
            _ => throw new ArgumentOutOfRangeException(nameof(node), node.Operation, "The operation has no words."),
        };
    }

    // Neighbours are joined, so that a sum over a list reads as one span.
    private static string Rows(int[] rows)
    {
        List<string> parts = [];
        for (var i = 0; i < rows.Length;)
        {
            var end = i;
            while (end + 1 < rows.Length && rows[end + 1] == rows[end] + 1)
            {
                end++;
            }

            parts.Add(end > i + 1 ? $"{rows[i]} to {rows[end]}" : string.Join(", ", rows[i..(end + 1)]));
            i = end + 1;
        }

        return $"{(rows.Length == 1 ? "row" : "rows")} {string.Join(", ", parts)}";
    }
}
