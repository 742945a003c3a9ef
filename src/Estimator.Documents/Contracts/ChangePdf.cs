using System.Globalization;
using Estimator.Documents.Papers;
using Estimator.Engine.Contracts;

namespace Estimator.Documents.Contracts;

/// <summary>A change order as PDF: what it adds to the price and to the days on top, then what is added, taken out and left out, and lines to sign on.</summary>
public static class ChangePdf
{
    /// <summary>The file. The same change order gives the same bytes.</summary>
    /// <param name="change">The change order.</param>
    /// <param name="letterhead">Who proposes it, and to whom.</param>
    public static byte[] Write(ChangePaper change, Letterhead letterhead)
    {
        ArgumentNullException.ThrowIfNull(change);
        ArgumentNullException.ThrowIfNull(letterhead);
        using var paper = new Paper(new PaperTitle(string.Create(CultureInfo.InvariantCulture, $"Change order {change.Number}"), change.Job, letterhead with { IssuedOn = change.On, Revision = "" }) { Cautions = [ChangeWords.Signed, .. Cautions.Safety] });
        paper.Section("What changes");
        paper.Say(change.Change.Price.ToString(), PaperLook.Figure);
        paper.Line("Why", change.Change.Reason.Length > 0 ? change.Change.Reason : "as agreed");
        paper.Line("Days added", ChangeWords.Days(change.Change.Days));
        var sums = new PaperTable(new PaperColumn("Contract", 4), PaperColumn.Figures("Amount", 1));
        sums.Row("Before this change, earlier accepted ones included", change.Before.ToString());
        sums.Row("This change", change.Change.Price.ToString());
        sums.Total("With this change", change.After.ToString());
        paper.Table(sums);
        Lines(paper, change.Change);
        paper.Section("Agreed");
        paper.Sign("Customer", "Contractor");
        return paper.ToBytes();
    }

    private static void Lines(Paper paper, ChangeOrder change)
    {
        var priced = change.Lines.Any(l => l.Amount is not null);
        foreach (var kind in change.Lines.GroupBy(l => l.Kind).OrderBy(g => g.Key))
        {
            paper.Section(ChangeWords.Of(kind.Key));
            var table = priced ? new PaperTable(new PaperColumn("What", 4), PaperColumn.Figures("Quantity", 1), PaperColumn.Figures("Amount", 1)) : new PaperTable(new PaperColumn("What", 4), PaperColumn.Figures("Quantity", 1));
            foreach (var line in kind)
            {
                table.Row(priced ? [line.Text, ChangeWords.Quantity(line), line.Amount?.ToString() ?? "in the price"] : [line.Text, ChangeWords.Quantity(line)]);
            }

            paper.Table(table);
        }
    }
}
