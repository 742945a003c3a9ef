using System.Collections.Immutable;
using Estimator.Data.Suppliers;
using Estimator.Data.Tests.Databases;
using Estimator.Engine.Measures;
using Estimator.Engine.Purchase.PriceFiles;
using Microsoft.Extensions.DependencyInjection;

namespace Estimator.Data.Tests.Suppliers;

/// <summary>The company's suppliers, on either database.</summary>
public abstract class SupplierTests(TestDatabase database)
{
    private static readonly Supplier Counter = new()
    {
        Name = "=Counter",
        Account = "A-17",
        Contact = "desk",
        Note = "closes at four",
        Way = SupplyWay.WillCall,
        Delivery = Money.FromDollars(35.25m),
        Minimum = Money.FromDollars(150),
        FreeFrom = Money.FromDollars(900),
        Matching = new ColumnMatching(ImmutableSortedDictionary<PriceColumn, string>.Empty.Add(PriceColumn.Price, "=NET\0").Add(PriceColumn.PricedBy, "U/M")),
    };

    private static CancellationToken Token => TestContext.Current.CancellationToken;

    [Fact]
    public async Task List_AfterSave_GivesTheSameSupplier()
    {
        var store = await NewStoreAsync();
        var saved = await store.SaveAsync(Counter, Token);
        Assert.True(saved.Saved);
        var expected = Counter with { Id = 1, Version = 1, Matching = Counter.Matching.With(PriceColumn.Price, "=NET\uFFFD") };
        Assert.Equal(expected, Assert.Single(await store.ListAsync(Token)));
    }

    [Fact]
    public async Task Save_AfterSomebodyElseSaved_OverwritesNothing()
    {
        var store = await NewStoreAsync();
        var read = (await store.SaveAsync(Counter, Token)).Stored;
        await store.SaveAsync(read with { Account = "B" }, Token);
        var late = await store.SaveAsync(read with { Account = "C" }, Token);
        Assert.Equal((false, "B"), (late.Saved, late.Stored.Account));
    }

    [Fact]
    public async Task Save_NewOnesAtTheSameTime_GetNumbersOfTheirOwn()
    {
        var store = await NewStoreAsync();
        await Task.WhenAll(Enumerable.Range(1, 6).Select(i => Task.Run(() => store.SaveAsync(Counter with { Name = $"Counter {i}" }, Token))));
        Assert.Equal([1, 2, 3, 4, 5, 6], (await store.ListAsync(Token)).Select(s => s.Id).Order());
    }

    [Fact]
    public async Task Save_NameOfAnother_SaysSo()
    {
        var store = await NewStoreAsync();
        await store.SaveAsync(Counter, Token);
        Assert.StartsWith("Name", (await Assert.ThrowsAsync<ArgumentException>(() => store.SaveAsync(Counter, Token))).Message, StringComparison.Ordinal);
        Assert.Empty(await (await NewStoreAsync()).ListAsync(Token));
    }

    [Theory]
    [InlineData("", 0, 0, "Name")]
    [InlineData("n", -1, 0, "Delivery")]
    [InlineData("n", 0, 1_000_001, "Minimum")]
    public async Task Save_BeyondTheLimits_SaysWhichField(string name, int delivery, int minimum, string field)
    {
        var store = await NewStoreAsync();
        var wrong = Counter with { Name = name, Delivery = Money.FromDollars(delivery), Minimum = Money.FromDollars(minimum) };
        Assert.StartsWith(field, (await Assert.ThrowsAsync<ArgumentException>(() => store.SaveAsync(wrong, Token))).Message, StringComparison.Ordinal);
    }

    private async Task<SupplierStore> NewStoreAsync() => (await database.NewCompanyAsync()).GetRequiredService<SupplierStore>();
}
