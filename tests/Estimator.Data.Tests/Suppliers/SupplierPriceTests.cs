using Estimator.Data.Suppliers;
using Estimator.Data.Tests.Databases;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase.PriceFiles;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Data.Tests.Suppliers;

/// <summary>Prices from price files, on either database.</summary>
public abstract class SupplierPriceTests(TestDatabase database)
{
    private const string Cable = "nm_b-12-2";
    private const string Breaker = "breaker-1-20-plain";
    private static readonly DateOnly Monday = new(2026, 3, 2);

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Current_AfterTwoFiles_IsTheNewerAndHistoryHoldsBoth()
    {
        var (services, id) = await SupplierAsync();
        var store = services.GetRequiredService<SupplierPriceStore>();
        Assert.NotNull(await store.WriteAsync(File(id, 0, Priced(Cable, 250, 101.2575m), Priced(Breaker, 1, 6.4m)), Token));
        var second = await store.WriteAsync(File(id, 1, Priced(Cable, 250, 99m)) with { FileName = "april.csv" }, Token);
        Assert.Equal((2, "april.csv", 1), (second!.Number, second.FileName, second.Prices));

        var current = await store.CurrentAsync(Token);
        Assert.Equal([(Breaker, 6.4m), (Cable, 99m)], current.Select(p => (p.Item, p.Price!.Value.ToDollars())));
        var cable = current[1];
        Assert.Equal(("N-" + Cable, "06291041500213", new DateOnly(2026, 2, 27), new DateOnly(2026, 6, 30), "Northlake", "NL"), (cable.Number, cable.Gtin, cable.QuotedOn, cable.ExpiresOn, cable.Make, cable.Series));
        Assert.Equal([(99m, "april.csv"), (101.2575m, "march.csv")], (await store.HistoryAsync(Cable, Token)).Select(h => (h.Price.Price!.Value.ToDollars(), h.From.FileName)));
        Assert.Equal([2, 1], (await store.ImportsAsync(id, Token)).Select(i => i.Number));
    }

    [Fact]
    public async Task Write_PackThatIsGone_IsWithdrawnAndKeptInHistory()
    {
        var (services, id) = await SupplierAsync();
        var store = services.GetRequiredService<SupplierPriceStore>();
        await store.WriteAsync(File(id, 0, Priced(Cable, 250, 100m)), Token);
        await store.WriteAsync(File(id, 1, new PackChange(PackChangeKind.Gone, Cable, 250, Money.FromDollars(100), null, null)), Token);
        Assert.Empty(await store.CurrentAsync(Token));
        Assert.Empty(await store.KnownAsync(id, Token));
        Assert.Equal([null, 100m], (await store.HistoryAsync(Cable, Token)).Select(h => h.Price.Price?.ToDollars()));
    }

    [Fact]
    public async Task Write_AfterAnotherFile_WritesNothing()
    {
        var (services, id) = await SupplierAsync();
        var store = services.GetRequiredService<SupplierPriceStore>();
        await store.WriteAsync(File(id, 0, Priced(Cable, 250, 100m)), Token);
        Assert.Null(await store.WriteAsync(File(id, 0, Priced(Cable, 250, 1m)), Token));
        Assert.Equal(100m, Assert.Single(await store.CurrentAsync(Token)).Price!.Value.ToDollars());
    }

    // The same pack twice breaks the key in the middle of the file.
    [Fact]
    public async Task Write_ThatFailsHalfWay_LeavesNothing()
    {
        var (services, id) = await SupplierAsync();
        var store = services.GetRequiredService<SupplierPriceStore>();
        PackChange[] rows = [.. Enumerable.Range(1, 1200).Select(i => Priced(Cable, i, 1m)), Priced(Cable, 7, 2m)];
        Assert.Null(await store.WriteAsync(File(id, 0, rows), Token));
        Assert.Empty(await store.CurrentAsync(Token));
        Assert.Empty(await store.ImportsAsync(id, Token));
        Assert.Empty((await store.LinksAsync(id, Token)).Numbers);
    }

    [Fact]
    public async Task Links_AfterWrite_KnowNumberAndGtin()
    {
        var (services, id) = await SupplierAsync();
        var store = services.GetRequiredService<SupplierPriceStore>();
        await store.WriteAsync(File(id, 0, Priced(Cable, 250, 100m)), Token);
        var links = await store.LinksAsync(id, Token);
        Assert.Equal((Cable, Cable), (links.Numbers["N-" + Cable], links.Gtins["06291041500213"]));
        Assert.Equal("NET", Assert.Single(await services.GetRequiredService<SupplierStore>().ListAsync(Token)).Matching.Headings[PriceColumn.Price]);
    }

    [Fact]
    public async Task Current_SupplierNoLongerBoughtFrom_IsLeftOut()
    {
        var (services, id) = await SupplierAsync();
        var (store, suppliers) = (services.GetRequiredService<SupplierPriceStore>(), services.GetRequiredService<SupplierStore>());
        await store.WriteAsync(File(id, 0, Priced(Cable, 250, 100m)), Token);
        await suppliers.SaveAsync((await suppliers.ListAsync(Token))[0] with { Active = false }, Token);
        Assert.Empty(await store.CurrentAsync(Token));
        Assert.Single(await store.KnownAsync(id, Token));
    }

    private static PackChange Priced(string item, int pack, decimal dollars) => new(PackChangeKind.New, item, pack, null, Money.FromDollars(dollars), new PriceRow(
        2, item, $"N-{item}", "06291041500213", "", dollars, PriceUnit.Each, pack, new DateOnly(2026, 2, 27), new DateOnly(2026, 6, 30), "Northlake", "NL"));

    private static NewPrices File(int supplier, int after, params PackChange[] changes) =>
        new(supplier, after, "march.csv", "hash", "Sam", Monday, ColumnMatching.None.With(PriceColumn.Price, "NET"), [.. changes]);

    private async Task<(ServiceProvider Services, int Id)> SupplierAsync()
    {
        var services = await database.NewCompanyAsync();
        return (services, (await services.GetRequiredService<SupplierStore>().SaveAsync(new Supplier { Name = "Counter" }, Token)).Stored.Id);
    }
}
