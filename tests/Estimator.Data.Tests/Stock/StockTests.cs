using Estimator.Data.Databases;
using Estimator.Data.Stock;
using Estimator.Data.Tests.Databases;
using Estimator.Engine.Measures;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Data.Tests.Stock;

/// <summary>What is on the shelf, on either database.</summary>
public abstract class StockTests(TestDatabase database)
{
    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Load_AfterSave_GivesTheSameShelf()
    {
        var store = await NewStoreAsync();
        await store.SaveAsync(new ShelfCount("plate-1", 12.5m, 0), Token);
        await store.SaveAsync(new ShelfPiece(0, "nm_b-12-2", " van 2 ", Length.FromFeet(88), 0), Token);
        var shelf = await store.LoadAsync(Token);
        Assert.Equal([new ShelfCount("plate-1", 12.5m, 1)], shelf.Counts);
        Assert.Equal([new ShelfPiece(1, "nm_b-12-2", "van 2", Length.FromFeet(88), 1)], shelf.Pieces);
        Assert.Equal(12.5m, shelf.ToStock().CountOf("plate-1"));
        Assert.Empty((await (await NewStoreAsync()).LoadAsync(Token)).Counts);
    }

    [Fact]
    public async Task Save_Zero_TakesItOffTheShelf()
    {
        var store = await NewStoreAsync();
        var count = (await store.SaveAsync(new ShelfCount("plate-1", 3, 0), Token)).Stored;
        var piece = (await store.SaveAsync(new ShelfPiece(0, "nm_b-12-2", "a", Length.FromFeet(9), 0), Token)).Stored;
        Assert.True((await store.SaveAsync(count with { Count = 0 }, Token)).Saved);
        Assert.True((await store.SaveAsync(piece with { Length = Length.Zero }, Token)).Saved);
        var shelf = await store.LoadAsync(Token);
        Assert.Empty(shelf.Counts);
        Assert.Empty(shelf.Pieces);
    }

    [Fact]
    public async Task Save_AfterSomebodyElseCounted_OverwritesNothing()
    {
        var store = await NewStoreAsync();
        var read = (await store.SaveAsync(new ShelfCount("plate-1", 3, 0), Token)).Stored;
        await store.SaveAsync(read with { Count = 5 }, Token);
        Assert.Equal(new Saving<ShelfCount>(false, new ShelfCount("plate-1", 5, 2)), await store.SaveAsync(read with { Count = 9 }, Token));
        Assert.False((await store.SaveAsync(new ShelfCount("plate-1", 9, 0), Token)).Saved);
        var piece = (await store.SaveAsync(new ShelfPiece(0, "nm_b-12-2", "a", Length.FromFeet(9), 0), Token)).Stored;
        await store.SaveAsync(piece with { Length = Length.FromFeet(5) }, Token);
        Assert.Equal(Length.FromFeet(5), (await store.SaveAsync(piece with { Length = Length.FromFeet(1) }, Token)).Stored.Length);
    }

    [Theory]
    [InlineData("", 1, "Item")]
    [InlineData("i", -1, "Count")]
    public async Task Save_BeyondTheLimits_SaysWhichField(string item, int count, string field)
    {
        var store = await NewStoreAsync();
        Assert.StartsWith(field, (await Assert.ThrowsAsync<ArgumentException>(() => store.SaveAsync(new ShelfCount(item, count, 0), Token))).Message, StringComparison.Ordinal);
    }

    private async Task<StockStore> NewStoreAsync() => (await database.NewCompanyAsync()).GetRequiredService<StockStore>();
}
