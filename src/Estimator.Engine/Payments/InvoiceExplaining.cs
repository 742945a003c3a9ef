using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Payments;

/// <summary>Explains the sums of an invoice that is kept. What was agreed and billed is given; a sum that a limit cut, or the last invoice settled, names what it would have been as its reason.</summary>
public static class InvoiceExplaining
{
    /// <summary>Number of the page of the explanation book.</summary>
    public const int PageNumber = 22;

    private const string Agreed = "$";

    /// <summary>The sums of an invoice with their nodes.</summary>
    /// <param name="before">The account as it stood before the invoice: contract, terms and earlier invoices.</param>
    /// <param name="invoice">The invoice.</param>
    public static ExplainedInvoice Of(ContractAccount before, Invoice invoice)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(invoice);
        var page = new PageWriter(PageNumber);
        Fact Given(string label, Money amount) => page.Given(Agreed, label, amount.ToDollars(), Unit.Dollars);
        var work = page.Sum("invoice-work", "Work billed here", Unit.Dollars, [.. invoice.Lines.Where(l => l.Now != Money.Zero).Select(l => page.Compute(Operation.Difference, "invoice-line", l.Title, Unit.Dollars, Given($"{l.Title}, done to date", l.Done), Given($"{l.Title}, billed before", l.Before)))]);
        var done = page.Compute(Operation.Sum, "invoice-work", "Work billed to date", Unit.Dollars, Given("Work billed before", before.Work), work);
        var deposit = Given("Deposit, as agreed", invoice.Deposit);
        var share = before.Sum == Money.Zero ? page.Constant("All", 1) : page.Compute(Operation.Quotient, "invoice-share", "Share of the contract that is billed", Unit.Factor, done, Given("Contract, changes included", before.Sum));
        var taken = page.Compute(Operation.Product, "invoice-deposit", "Deposit that belongs to the work billed", Unit.Dollars, Given("Deposit asked for", before.Billed.Aggregate(Money.Zero, (sum, i) => sum + i.Deposit)), share);
        var applied = Settled(page, "Deposit taken off", invoice.DepositApplied, taken, Given("Deposit taken off before", before.Billed.Aggregate(Money.Zero, (sum, i) => sum + i.DepositApplied)));
        var held = Given("Retained before", before.Held);
        var retained = Settled(page, "Retained until the end", invoice.Retained, page.Compute(Operation.PercentOf, "invoice-retainage", "Retainage on the work billed to date", Unit.Dollars, done, page.Given(Agreed, "Retainage, as agreed", before.Terms.RetainagePercent, Unit.Percent)), held);
        var released = page.Compute(Operation.Because, "invoice-release", "Retained before, paid now", Unit.Dollars, Given("Retained before, paid now", invoice.Released), held);
        var asked = page.Compute(Operation.Sum, "invoice-due", "Asked for", Unit.Dollars, deposit, work, released);
        return new ExplainedInvoice(work, deposit, applied, retained, released, page.Compute(Operation.Difference, "invoice-due", "Due with this invoice", Unit.Dollars, asked, applied, retained), page.ToPage());
    }

    // By the rule where that is what was billed; else as billed, with the rule for a reason.
    private static Fact Settled(PageWriter page, string label, Money billed, Fact toDate, Fact before)
    {
        var rule = page.Compute(Operation.Difference, "invoice-settled", $"{label}, by the rule", Unit.Dollars, Cents.Round(page, toDate), before);
        return rule.Value == billed.ToDollars()
            ? page.Compute(Operation.Because, "invoice-settled", label, Unit.Dollars, rule)
            : page.Compute(Operation.Because, "invoice-settled", $"{label}, as billed", Unit.Dollars, page.Given(Agreed, label, billed.ToDollars(), Unit.Dollars), rule);
    }
}
