using Estimator.Documents.Explanations;
using Estimator.Documents.Workbooks;
using Estimator.Engine;
using Estimator.Engine.Explanations;
using Estimator.Engine.Pricing.Ranges;

namespace Estimator.Documents.Pricing;

/// <summary>How the range of the price was drawn: what moves it, and how the draws lie.</summary>
internal static class RangeSheet
{
    internal const string Name = "Range";

    private const int Longest = 40;

    /// <summary>The figures of the sheet, for the index of explanations.</summary>
    internal static IEnumerable<NodeRef> Figures(PriceRange range) => new[] { range.Middle, range.WithinPrice, range.Draws, range.BelowPercent, range.AbovePercent }
        .Concat(range.Factors.SelectMany(f => new[] { f.Share, f.Less, f.More })).Select(f => f.Node);

    internal static void Write(SheetPage page, JobEstimate estimate, ExplanationIndex index)
    {
        var (styles, range) = (page.Styles, estimate.Bid.Range);
        page.Columns(62, 14, 14, 14, 10);
        page.Put(1, 1, $"Range of the price: {estimate.House.Job.Name}", styles.Title);
        page.Across(2, 1, 5, "Not for the customer. What the price would be, were it known today how things turn out, drawn many times; the figures here are of the estimate and do not change.", styles.Subtitle);
        var row = Heads(page, 4, "The draws", ">Figure", "", "", ">Explained in row");
        row = Put(page, row, "Draws", range.Draws, SheetStyles.Whole, index);
        row = Put(page, row, "Half of them stay below, $", range.Middle, SheetStyles.Dollars, index);
        row = Put(page, row, "Draws that come to no more than the price, %", range.WithinPrice, SheetStyles.Tenths, index);
        row = Put(page, row, "Low end below the price, %", range.BelowPercent, SheetStyles.Plain, index);
        row = Put(page, row, "High end above the price, %", range.AbovePercent, SheetStyles.Plain, index);
        row = Heads(page, row + 1, "What moves the price, each alone", ">Share of cost, %", ">Less, $", ">More, $", ">Explained in row");
        foreach (var factor in range.Factors)
        {
            page.Put(row, 1, factor.Label, styles.Text);
            page.Put(row, 2, factor.Share.Value, styles.Number(SheetStyles.Tenths));
            page.Put(row, 3, factor.Less.Value, styles.Number(SheetStyles.Dollars));
            page.Put(row, 4, factor.More.Value, styles.Number(SheetStyles.Dollars));
            page.Explained(row++, 5, index[factor.More.Node]);
        }

        row = Heads(page, row + 1, "How the draws lie", ">From, $", ">To under, $", ">Draws", "");
        var most = range.Bins.Select(b => b.Draws).DefaultIfEmpty(1).Max();
        foreach (var bin in range.Bins)
        {
            page.Put(row, 1, new string('\u2588', bin.Draws * Longest / most), styles.Soft);
            page.Put(row, 2, bin.From, styles.Number(SheetStyles.Whole));
            page.Put(row, 3, bin.To, styles.Number(SheetStyles.Whole));
            page.Put(row, 4, bin.Draws, styles.Number(SheetStyles.Whole));
            page.Blank(row++, 5, styles.Text);
        }

        page.Across(row + 1, 1, 5, "Each part of the cost is off by itself; the crew's pace, copper and the like move all parts that they act on together. Widths: common practice, no source. Method: GAO Cost Estimating and Assessment Guide, GAO-20-195G, step 9.", styles.Note);
        page.Print(landscape: false, headingRows: 0, repeatFrom: 0);
    }

    private static int Heads(SheetPage page, int row, string title, params ReadOnlySpan<string> heads)
    {
        page.Put(row, 1, title, page.Styles.Section);
        for (var i = 0; i < heads.Length; i++)
        {
            page.Put(row, i + 2, heads[i].TrimStart('>'), page.Styles.HeadRight);
        }

        return row + 1;
    }

    private static int Put(SheetPage page, int row, string label, Fact figure, string format, ExplanationIndex index)
    {
        page.Put(row, 1, label, page.Styles.Text);
        page.Put(row, 2, figure.Value, page.Styles.Number(format));
        page.Fill(row, 3, 4, page.Styles.Text);
        page.Explained(row, 5, index[figure.Node]);
        return row + 1;
    }
}
