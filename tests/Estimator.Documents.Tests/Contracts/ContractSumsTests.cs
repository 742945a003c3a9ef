using CsCheck;
using Estimator.Documents.Contracts;
using Estimator.Documents.Tests.Sums;
using Estimator.Engine.Contracts;
using Estimator.Engine.Measures;
using Estimator.Engine.Payments;

namespace Estimator.Documents.Tests.Contracts;

/// <summary>Change orders and invoices of random contracts, printed and read back: lines add up to totals, invoices to the contract, and what is retained is paid in the end, to the cent.</summary>
public sealed class ContractSumsTests
{
    private const int Contracts = 60;
    private static readonly DateOnly Monday = new(2026, 3, 2);

    [Fact]
    [AddsUp("ChangePdf")]
    [AddsUp("InvoicePdf")]
    public void Papers_OfRandomContracts_AddUpToTheCent() => RandomContract.All.Sample(contract =>
    {
        var account = new ContractAccount(contract.Plan.Frozen, contract.Plan.Terms, []);
        Assert.Equal(contract.Price, account.Sum);
        var worth = contract.Price.ToDollars();
        List<PrintedInvoice> invoices = [];
        void Bill(Parsed<Invoice> made)
        {
            if (made.Ok)
            {
                invoices.Add(Printed(account, made.Value, invoices));
                account = account with { Billed = account.Billed.Add(made.Value) };
            }
        }

        if (contract.AsksDeposit)
        {
            Bill(account.DepositInvoice());
        }

        foreach (var (percents, change) in contract.Steps)
        {
            if (change is not null && account.Sum + change.Price > account.Asked)
            {
                worth = WithChange(change, account.Sum);
                account = account with { Lines = account.Lines.Add(new($"change-{account.Lines.Length}", "Change order", change.Price)) };
            }

            Bill(account.Progress(account.Standing.Zip(percents).ToDictionary(x => x.First.Id, x => x.First.Before + (x.First.Left * (x.Second / 100m)).RoundToCents(), StringComparer.Ordinal)));
        }

        Bill(account.Final());
        if (account.Closed)
        {
            Assert.Equal(worth, invoices.Sum(i => i.Due));
            Assert.Equal((worth, 0m), (invoices[^1].Contract, invoices[^1].Open));
            Assert.Equal(-invoices.Sum(i => i["Retained until the end"]), invoices.Sum(i => i["Retained before, paid now"]));
            Assert.Equal(-invoices.Sum(i => i["Deposit taken off"]), invoices.Sum(i => i["Deposit before the work starts"]));
            Assert.All(invoices[^1].Left, left => Assert.Equal(0m, left));
        }
        else
        {
            // What is owed to the customer is paid back and not billed.
            Assert.Contains(account.Lines, l => l.Value < Money.Zero);
        }
    }, iter: Contracts);

    private static decimal WithChange(ChangeOrder change, Money before)
    {
        var tables = PrintedTables.Of(ChangePdf.Write(new ChangePaper("Job", 1, change, Monday, before), Letterhead.Blank));
        Assert.All(tables.SelectMany(t => t.Sums), s => Assert.Equal(s.Printed, s.Lines));
        var contract = tables.Single(t => t.Heads == "Contract Amount");
        Assert.Equal(before.ToDollars(), Row(contract, "Before this change"));
        Assert.Equal(Row(contract, "This change"), tables.Where(t => t.Heads == "What Quantity Amount").Sum(t => t.Sum(2)));
        Assert.Equal(change.Lines.Length, tables.Where(t => t.Heads == "What Quantity Amount").Sum(t => t.Rows.Count));
        return Row(contract, "With this change");
    }

    private static PrintedInvoice Printed(ContractAccount account, Invoice invoice, List<PrintedInvoice> earlier)
    {
        var paper = new InvoicePaper("Job", 1000 + earlier.Count, invoice, account.Terms, Monday, account.Sum, account.Asked);
        var printed = new PrintedInvoice(PrintedTables.Of(InvoicePdf.Write(paper, Letterhead.Blank)));
        Assert.All(printed.Tables.SelectMany(t => t.Sums), s => Assert.Equal(s.Printed, s.Lines));
        Assert.Equal(invoice.Due.ToDollars(), printed.Due);
        Assert.Equal(earlier.Sum(i => i.Due), printed.AskedBefore);
        Assert.Equal(printed.Contract, printed.AskedBefore + printed.Due + printed.Open);
        if (!invoice.Lines.IsEmpty)
        {
            Assert.Equal(printed["Work billed here"], printed.Now.Sum());
            Assert.Equal(printed.Contract, printed.Value.Sum());
            Assert.Equal(printed.Value, printed.Before.Zip(printed.Now, (b, n) => b + n).Zip(printed.Left, (d, l) => d + l));
        }

        return printed;
    }

    private static decimal Row(PrintedTable table, string label) => table.Rows.Single(r => r.Text.StartsWith(label, StringComparison.Ordinal)).Figures[^1]!.Value;
}
