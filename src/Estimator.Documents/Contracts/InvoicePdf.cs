using System.Globalization;
using Estimator.Documents.Papers;
using Estimator.Engine.Measures;

namespace Estimator.Documents.Contracts;

/// <summary>An invoice as PDF: what is due on top, then the schedule of values with what was billed of each line.</summary>
public static class InvoicePdf
{
    /// <summary>The file. The same invoice gives the same bytes.</summary>
    /// <param name="invoice">The invoice.</param>
    /// <param name="letterhead">Who asks for it, and whom.</param>
    public static byte[] Write(InvoicePaper invoice, Letterhead letterhead)
    {
        ArgumentNullException.ThrowIfNull(invoice);
        ArgumentNullException.ThrowIfNull(letterhead);
        using var paper = new Paper(new PaperTitle(string.Create(CultureInfo.InvariantCulture, $"Invoice {invoice.Number}"), invoice.Job, letterhead with { IssuedOn = invoice.On, Revision = "" }) { Cautions = [InvoiceWords.Law, .. Cautions.Safety] });
        paper.Section("To pay");
        paper.Say(invoice.Invoice.Due.ToString(), PaperLook.Figure);
        paper.Line("Due", Day(invoice.DueOn));
        paper.Line("For", InvoiceWords.Of(invoice.Invoice.Kind));
        Sums(paper, invoice);
        if (!invoice.Invoice.Lines.IsEmpty)
        {
            Lines(paper, invoice);
        }

        paper.Section("Terms");
        paper.Say(InvoiceWords.Terms(invoice.Terms));
        return paper.ToBytes();
    }

    private static void Sums(Paper paper, InvoicePaper invoice)
    {
        paper.Section("How it comes to that");
        var table = new PaperTable(new PaperColumn("What", 4), PaperColumn.Figures("Amount", 1));
        foreach (var (what, amount) in InvoiceWords.Sums(invoice.Invoice))
        {
            table.Row(what, amount.ToString());
        }

        table.Total("Due with this invoice", invoice.Invoice.Due.ToString());
        table.Row("Contract, accepted changes included", invoice.Contract.ToString());
        table.Row("Asked for before", invoice.AskedBefore.ToString());
        table.Row("Open after this invoice, what is retained included", invoice.Open.ToString());
        paper.Table(table);
    }

    private static void Lines(Paper paper, InvoicePaper invoice)
    {
        paper.Section("Schedule of values");
        var table = new PaperTable(
            new PaperColumn("Work", 3.4), PaperColumn.Figures("Value", 1.4), PaperColumn.Figures("Billed before", 1.4), PaperColumn.Figures("This invoice", 1.4), PaperColumn.Figures("Billed, %", 0.9), PaperColumn.Figures("Left", 1.4));
        foreach (var line in invoice.Invoice.Lines)
        {
            table.Row(line.Title, line.Value.ToString(), line.Before.ToString(), line.Now.ToString(), line.DonePercent.ToString("0.#", CultureInfo.InvariantCulture), line.Left.ToString());
        }

        Money Sum(Func<Engine.Payments.InvoiceLine, Money> of) => invoice.Invoice.Lines.Aggregate(Money.Zero, (sum, l) => sum + of(l));
        table.Total("All", Sum(l => l.Value).ToString(), Sum(l => l.Before).ToString(), Sum(l => l.Now).ToString(), "", Sum(l => l.Left).ToString());
        paper.Table(table);
    }

    private static string Day(DateOnly day) => day.ToString("MMMM d, yyyy", CultureInfo.InvariantCulture);
}
