using CsCheck;
using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;
using Estimator.Engine.Payments;
using Estimator.TestKit;

namespace Estimator.Engine.Tests.Payments;

public sealed class ContractAccountTests
{
    private static readonly ContractAccount House = new([new("rough", "Rough-in", Dollars(6000)), new("trim", "Trim-out", Dollars(3000)), new("final", "Final", Dollars(1000))], new(Money.Zero, 5, 15, 1.5m), []);

    // The rule of the University of California Facilities Manual, volume 5, chapters 15.1 and 15.2: each activity's cost times its percentage of completion, less what was paid, less retention; 95 percent of the
    // work in place is paid, 5 percent held. By hand: 6000 x 0.5 + 1000 = 4000, of it 3800; then 6000 + 3000 x 0.4 + 1000 = 8200, of it 7790, less 3800 = 3990.
    [Fact]
    public void Progress_WithRetention_IsWorkLessPaidLessRetained()
    {
        var first = House.Progress(Done(("rough", 3000), ("final", 1000))).Value;
        Assert.Equal((4000m, 200m, 3800m), (first.Work.ToDollars(), first.Retained.ToDollars(), first.Due.ToDollars()));
        var second = After(House, first).Progress(Done(("rough", 6000), ("trim", 1200))).Value;
        Assert.Equal((4200m, 210m, 3990m), (second.Work.ToDollars(), second.Retained.ToDollars(), second.Due.ToDollars()));
        Assert.Equal((40m, 1200m), (second.Lines[1].DonePercent, second.Lines[1].Now.ToDollars()));
        var last = After(House, first, second).Final().Value;
        Assert.Equal((1800m, 410m, 2210m), (last.Work.ToDollars(), last.Released.ToDollars(), last.Due.ToDollars()));
        Assert.Equal(0m, After(House, first, second, last).Open.ToDollars());
    }

    [Fact]
    public void Deposit_IsTakenOffAsTheWorkIsBilled()
    {
        var agreed = House with { Terms = House.Terms with { Deposit = Dollars(1000) } };
        var deposit = agreed.DepositInvoice().Value;
        Assert.Equal(1000m, deposit.Due.ToDollars());
        var rough = After(agreed, deposit).Progress(Done(("rough", 6000))).Value;
        Assert.Equal((600m, 300m, 5100m), (rough.DepositApplied.ToDollars(), rough.Retained.ToDollars(), rough.Due.ToDollars()));
        Assert.Equal(3900m, After(agreed, deposit, rough).Final().Value.Due.ToDollars());
    }

    [Fact]
    public void Progress_BeyondALineOrBackwards_IsRefusedWithWhatIsAccepted()
    {
        Assert.Contains("$0.00 to $6,000.00 is accepted", House.Progress(Done(("rough", 6000.01m))).Problem, StringComparison.Ordinal);
        var billed = After(House, House.Progress(Done(("rough", 3000))).Value);
        Assert.Contains("$3,000.00 to $6,000.00 is accepted", billed.Progress(Done(("rough", 2000))).Problem, StringComparison.Ordinal);
        Assert.NotNull(billed.Progress(Done(("attic", 1))).Problem);
        Assert.NotNull(billed.Progress(Done()).Problem);
        Assert.NotNull(After(billed, billed.Final().Value).Final().Problem);
    }

    [Fact]
    public void Credit_OfAChange_IsBilledWithWorkThatIsWorthMore()
    {
        var changed = House with { Lines = House.Lines.Add(new("change-1", "Change order 1", Dollars(-250))) };
        Assert.Contains("paid back, not billed", changed.Progress(Done(("change-1", -250))).Problem, StringComparison.Ordinal);
        Assert.Equal(712.5m, changed.Progress(Done(("change-1", -250), ("final", 1000))).Value.Due.ToDollars());
        Assert.Equal(9750m, changed.Final().Value.Due.ToDollars());
    }

    [Fact]
    public void Invoices_OfAnyContract_AddUpToItAndAskForNothingBelowZero()
    {
        var cents = Gen.Long[0, 2_000_000];
        var contracts = Gen.Select(cents.Array[1, 8], Gen.Int[0, 100], Gen.Int[0, 30], Gen.Select(Gen.Int[0, 100].Array[8], Gen.Long[-300_000, 900_000]).List[0, 6], Gen.Bool);
        contracts.Sample((values, depositPercent, retainage, steps, asksDeposit) =>
        {
            var deposit = decimal.Floor(values.Sum() * depositPercent / 100m) / 100m;
            var account = new ContractAccount([.. values.Select((v, i) => new ContractLine($"l{i}", $"Line {i}", Dollars(v / 100m)))], new(Dollars(deposit), retainage, 15, 0), []);
            account = asksDeposit && account.DepositInvoice() is { Ok: true } first ? After(account, first.Value) : account;
            foreach (var (percents, change) in steps)
            {
                account = account.Sum + Dollars(change / 100m) > account.Asked ? account with { Lines = account.Lines.Add(new($"change-{account.Lines.Length}", "Change", Dollars(change / 100m))) } : account;
                var done = account.Standing.Take(percents.Length).Zip(percents).ToDictionary(x => x.First.Id, x => x.First.Before + (x.First.Left * (x.Second / 100m)).RoundToCents(), StringComparer.Ordinal);
                account = account.Progress(done) is { Ok: true } made ? Checked(account, made.Value) : account;
            }

            if (account.Final() is { Ok: true } last)
            {
                account = Checked(account, last.Value);
                Assert.Equal((0m, 0m, 0m), (account.Open.ToDollars(), account.Held.ToDollars(), account.DepositLeft.ToDollars()));
                Assert.All(account.Standing, l => Assert.Equal(l.Value, l.Before));
            }
            else
            {
                Assert.Contains(account.Lines, l => l.Value < Money.Zero);
            }
        });
    }

    private static ContractAccount Checked(ContractAccount account, Invoice invoice)
    {
        var after = After(account, invoice);
        var told = InvoiceExplaining.Of(account, invoice);
        Assert.Equal((invoice.Due, invoice.Work, invoice.Retained, invoice.DepositApplied), (told.Due.AsMoney().Value, told.Work.AsMoney().Value, told.Retained.AsMoney().Value, told.DepositApplied.AsMoney().Value));
        Assert.Empty(ExplanationCheck.Problems(new ExplanationBook([told.Page])));
        Assert.Equal(after.Sum, after.Asked + after.Open);
        Money[] none = [invoice.Due, invoice.DepositApplied, invoice.Retained, invoice.Released, after.Held, after.DepositLeft];
        Assert.All(none, m => Assert.True(m >= Money.Zero && m == m.RoundToCents(), $"{m}"));
        Assert.All(after.Standing, l => Assert.True(l.Value < Money.Zero ? l.Before >= l.Value && l.Before <= Money.Zero : l.Before >= Money.Zero && l.Before <= l.Value));
        return after;
    }

    private static ContractAccount After(ContractAccount account, params Invoice[] invoices) => account with { Billed = [.. account.Billed, .. invoices] };

    private static Dictionary<string, Money> Done(params (string Id, decimal Dollars)[] done) => done.ToDictionary(d => d.Id, d => Dollars(d.Dollars), StringComparer.Ordinal);

    private static Money Dollars(decimal dollars) => Money.FromDollars(dollars);
}
