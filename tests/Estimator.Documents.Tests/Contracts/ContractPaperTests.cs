using System.Globalization;
using CsCheck;
using Estimator.Documents.Contracts;
using Estimator.Documents.Tests.Papers;
using Estimator.Documents.Tests.Sums;
using Estimator.Engine.Contracts;
using Estimator.Engine.Measures;
using Estimator.Engine.Payments;

namespace Estimator.Documents.Tests.Contracts;

/// <summary>Invoices and change orders, read back by a library that had no part in writing them.</summary>
public sealed class ContractPaperTests
{
    private static readonly DateOnly Monday = new(2026, 3, 2);
    private static readonly ContractTerms Terms = new(Dollars(1000), 5, 15, 1.5m);
    private static readonly Letterhead Head = Letterhead.Blank with { Company = "Firm", CompanyLines = ["License 1"] };

    [Fact]
    public void InvoicePdf_ReadBack_SaysTheAmountsOfTheInvoice()
    {
        var invoice = Rough();
        var read = new PaperReading(InvoicePdf.Write(invoice, Head));
        read.IsWellMade();
        Assert.Contains("$5,100.00", read.AllLines);
        Assert.Contains("Due March 17, 2026", read.AllLines);
        Assert.Contains("Rough-in $6,000.00 $0.00 $6,000.00 100 $0.00", read.AllLines);
        Assert.Contains("Deposit taken off -$600.00", read.AllLines);
        Assert.Contains("Open after this invoice, what is retained included $3,900.00", read.AllLines);
        Assert.Contains("All $10,000.00 $0.00 $6,000.00 $4,000.00", read.AllLines);
        Assert.Contains(InvoiceWords.Law, read.Text, StringComparison.Ordinal);
    }

    [Fact]
    [AddsUp("InvoiceTable")]
    public void InvoiceCsv_RowsOfLines_AddUpToWhatIsDue() =>
        Gen.Select(Gen.Int[0, 600_000], Gen.Int[0, 400_000]).Where((a, b) => a + b > 0).Sample((rough, trim) =>
        {
            var account = Account();
            account = account with { Billed = [account.DepositInvoice().Value] };
            var made = account.Progress(new Dictionary<string, Money> { ["rough"] = Dollars(rough / 100m), ["trim"] = Dollars(trim / 100m) });
            Assert.True(made.Ok, made.Problem);
            var rows = InvoiceTable.Write(new InvoicePaper("Job", 1001, made.Value, Terms, Monday, account.Sum, account.Asked)).Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(r => r.Split(',')).ToList();
            decimal Of(string what) => decimal.Parse(rows.Single(r => r[3] == what)[6], CultureInfo.InvariantCulture);
            Assert.Equal(Of("work"), rows.Where(r => r[2] == "line").Sum(r => decimal.Parse(r[6], CultureInfo.InvariantCulture)));
            Assert.Equal(Of("due"), Of("deposit") + Of("work") - Of("deposit_taken_off") - Of("retained") + Of("retained_paid"));
            Assert.Equal(made.Value.Due.ToDollars(), Of("due"));
        }, iter: 200);

    [Fact]
    public void ChangePdf_ReadBack_SaysWhatChangesAndWhatTheContractComesTo()
    {
        var change = new ChangeOrder(1, 2, [new(ChangeLineKind.Added, "Duplex receptacle, 20 A", 2, "each", Dollars(240)), new(ChangeLineKind.Removal, "Box and cable", 1.5m, "hour", Dollars(90.5m)), new(ChangeLineKind.Credit, "=Luminaire", 1, "each", Dollars(-35.25m))], Dollars(295.25m), 2, "Owner wants more outlets", []);
        var read = new PaperReading(ChangePdf.Write(new ChangePaper("House", 3, change, Monday, Dollars(10_000)), Head));
        read.IsWellMade();
        Assert.Contains("$295.25", read.AllLines);
        Assert.Contains("With this change $10,295.25", read.AllLines);
        Assert.Contains("Days added 2 working days", read.AllLines);
        Assert.Contains("Duplex receptacle, 20 A 2 ea $240.00", read.AllLines);
        Assert.Contains("=Luminaire 1 ea -$35.25", read.AllLines);
        Assert.Contains(ChangeWords.Signed, read.Text, StringComparison.Ordinal);
        Assert.Equal(InvoicePdf.Write(Rough(), Head), InvoicePdf.Write(Rough(), Head));
    }

    private static InvoicePaper Rough()
    {
        var account = Account();
        account = account with { Billed = [account.DepositInvoice().Value] };
        return new InvoicePaper("House", 1002, account.Progress(new Dictionary<string, Money> { ["rough"] = Dollars(6000) }).Value, Terms, Monday, account.Sum, account.Asked);
    }

    private static ContractAccount Account() => new([new("rough", "Rough-in", Dollars(6000)), new("trim", "Trim-out", Dollars(4000))], Terms, []);

    private static Money Dollars(decimal dollars) => Money.FromDollars(dollars);
}
