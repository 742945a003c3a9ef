using Estimator.Data.Companies;
using Estimator.Data.Tests.Databases;
using Estimator.Engine.House;
using Estimator.Engine.Measures;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Data.Tests.Companies;

/// <summary>A company's settings, on either database.</summary>
public abstract class CompanyTests(TestDatabase database)
{
    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Load_AfterSave_GivesTheSameSettings()
    {
        var store = await NewStoreAsync();
        var empty = await store.LoadAsync(Token);
        Assert.Equal(("", 0), (empty.Name, empty.AddressLines.Length));
        var wanted = empty with
        {
            Name = "=Sample & Sons",
            AddressLines = ["1 Sample Street", "Line <two>"],
            Licence = "Licence sentence",
            Rates = new BidSettings { ElectricianWage = Money.FromDollars(41.255m), OverheadPercent = Percent.FromHundredths(12.5m), ProfitBasis = ProfitBasis.Margin, ValidDays = 21 },
            Payment = new PaymentTerms { DepositPercent = Percent.FromHundredths(10), DepositCap = Money.FromDollars(1000), RetainagePercent = Percent.FromHundredths(5), DaysToPay = 30, LateChargePercent = Percent.FromHundredths(1.5m) },
        };
        Assert.True((await store.SaveAsync(wanted, Token)).Saved);
        var loaded = await store.LoadAsync(Token);
        Assert.Equal((wanted.Name, wanted.Licence, wanted.Rates), (loaded.Name, loaded.Licence, loaded.Rates));
        Assert.Equal(wanted.AddressLines, loaded.AddressLines);
        Assert.Equal(wanted.Payment, loaded.Payment with { Milestones = [] });
    }

    // Settings of an earlier release: rates alone.
    [Fact]
    public void Read_OfRatesWithoutTerms_StatesNone()
    {
        var (rates, payment) = StartingRates.Read("""{"overhead_percent": 12.5}""");
        Assert.Equal(Percent.FromHundredths(12.5m), rates.OverheadPercent);
        Assert.Equal(new PaymentTerms(), payment with { Milestones = [] });
    }

    [Fact]
    public async Task Save_AfterSomebodyElseSaved_OverwritesNothing()
    {
        var store = await NewStoreAsync();
        var read = await store.LoadAsync(Token);
        Assert.True((await store.SaveAsync(read with { Name = "Theirs" }, Token)).Saved);
        var mine = await store.SaveAsync(read with { Name = "Mine" }, Token);
        Assert.Equal((false, "Theirs"), (mine.Saved, mine.Stored.Name));
        Assert.True((await store.SaveAsync(mine.Stored with { Name = "Mine, seen theirs" }, Token)).Saved);
    }

    [Fact]
    public async Task Save_ByManyAtTheSameTime_LetsOneThrough()
    {
        var store = await NewStoreAsync();
        var read = await store.LoadAsync(Token);
        var saves = await Task.WhenAll(Enumerable.Range(1, 8).Select(i => Task.Run(() => store.SaveAsync(read with { Name = $"{i}" }, Token))));
        Assert.Equal(Assert.Single(saves, s => s.Saved).Stored.Name, (await store.LoadAsync(Token)).Name);
    }

    private async Task<CompanyStore> NewStoreAsync() => (await database.NewCompanyAsync()).GetRequiredService<CompanyStore>();
}
