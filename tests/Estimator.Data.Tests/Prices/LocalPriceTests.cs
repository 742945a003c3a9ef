using Estimator.Data.Prices;
using Estimator.Data.Tests.Databases;
using Estimator.Engine.Measures;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Data.Tests.Prices;

/// <summary>Local prices, on either database.</summary>
public abstract class LocalPriceTests(TestDatabase database)
{
    private static readonly LocalPrice Cable = new()
    {
        Item = "nm_b-12-2",
        Supplier = "=Supplier",
        PackSize = 250,
        Price = Money.FromDollars(101.2575m),
        AsOf = new DateOnly(2026, 2, 28),
        Note = "by phone",
    };

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public async Task List_AfterSave_GivesTheSamePrice()
    {
        var store = await NewStoreAsync();
        var saved = await store.SaveAsync(Cable, Token);
        Assert.True(saved.Saved);
        Assert.Equal(Cable with { Version = saved.Stored.Version }, Assert.Single(await store.ListAsync(Token)));
        Assert.Equal("as of 2026-02-28: by phone", saved.Stored.ToOffer().Note);
    }

    [Fact]
    public async Task Save_OfAChange_ReplacesThePriceThatWasRead()
    {
        var store = await NewStoreAsync();
        var read = (await store.SaveAsync(Cable, Token)).Stored;
        await store.SaveAsync(read with { Price = Money.FromDollars(99) }, Token);
        Assert.Equal(99m, Assert.Single(await store.ListAsync(Token)).Price.ToDollars());
    }

    [Fact]
    public async Task Save_AfterSomebodyElseSaved_OverwritesNothing()
    {
        var store = await NewStoreAsync();
        await store.SaveAsync(Cable, Token);
        var second = await store.SaveAsync(Cable with { Price = Money.FromDollars(1) }, Token);
        Assert.Equal((false, Cable.Price), (second.Saved, second.Stored.Price));
    }

    [Fact]
    public async Task Save_ByManyAtTheSameTime_LetsOneThrough()
    {
        var store = await NewStoreAsync();
        var saves = await Task.WhenAll(Enumerable.Range(1, 8).Select(i => Task.Run(() => store.SaveAsync(Cable with { Note = $"{i}" }, Token))));
        Assert.Equal(Assert.Single(saves, s => s.Saved).Stored.Note, Assert.Single(await store.ListAsync(Token)).Note);
    }

    [Fact]
    public async Task Remove_TakesThatPackAlone()
    {
        var store = await NewStoreAsync();
        await store.SaveAsync(Cable, Token);
        await store.SaveAsync(Cable with { PackSize = 50 }, Token);
        await store.RemoveAsync(Cable, Token);
        Assert.Equal(50, Assert.Single(await store.ListAsync(Token)).PackSize);
        Assert.Empty(await (await NewStoreAsync()).ListAsync(Token));
    }

    [Theory]
    [InlineData("", "s", 1, 1, "Item")]
    [InlineData("i", " ", 1, 1, "Supplier")]
    [InlineData("i", "s", 0, 1, "PackSize")]
    [InlineData("i", "s", 1, -1, "Price")]
    public async Task Save_BeyondTheLimits_SaysWhichField(string item, string supplier, int pack, int dollars, string field)
    {
        var store = await NewStoreAsync();
        var price = Cable with { Item = item, Supplier = supplier, PackSize = pack, Price = Money.FromDollars(dollars) };
        Assert.StartsWith(field, (await Assert.ThrowsAsync<ArgumentException>(() => store.SaveAsync(price, Token))).Message, StringComparison.Ordinal);
    }

    private async Task<LocalPriceStore> NewStoreAsync() => (await database.NewCompanyAsync()).GetRequiredService<LocalPriceStore>();
}
