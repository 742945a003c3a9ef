using System.Collections.Immutable;
using Estimator.Data.Actuals;
using Estimator.Data.Databases;
using Estimator.Data.Prices;
using Estimator.Data.Suppliers;
using Estimator.Engine.Learning;

namespace Estimator.Web.Catalogues;

/// <summary>The company's own prices and those of its suppliers' price files, kept in the stores and laid over the catalogue in force: a change prices all open jobs again. One for the whole program.</summary>
public sealed class LocalPriceShelf(IServiceScopeFactory scopes, CatalogueShelf catalogues) : IHostedService, IDisposable
{
    private readonly SemaphoreSlim _turn = new(1, 1);
    private readonly PricedCatalogue _builtIn = CatalogueShelf.BuiltIn();

    /// <summary>Raised after the prices changed.</summary>
    public event Action? Changed;

    /// <summary>The prices, by item, supplier and pack.</summary>
    public ImmutableArray<LocalPrice> Prices { get; private set; } = [];

    /// <summary>The prices in force from suppliers' price files, by item, supplier and pack.</summary>
    public ImmutableArray<SupplierPrice> FromFiles { get; private set; } = [];

    /// <summary>The factors that the company accepted from its closed jobs.</summary>
    public ImmutableArray<OwnUnit> Units { get; private set; } = [];

    /// <summary>Reads all prices again, after a price file was written, a supplier changed or a factor was accepted.</summary>
    public Task RefreshAsync(CancellationToken token = default) => DoAsync(_ => Task.CompletedTask, token);

    /// <summary>The own price of a pack of an item, the newest where several suppliers have one; null where there is none.</summary>
    public LocalPrice? Of(string item, int pack) => Prices.Where(p => p.Item == item && p.PackSize == pack).OrderByDescending(p => p.AsOf).FirstOrDefault();

    /// <summary>Saves a price, new or changed.</summary>
    /// <exception cref="ArgumentException">A field is empty or beyond <see cref="PriceLimits"/>.</exception>
    public async Task<Saving<LocalPrice>> SaveAsync(LocalPrice price, CancellationToken token = default)
    {
        Saving<LocalPrice>? saving = null;
        await DoAsync(async store => saving = await store.SaveAsync(price, token), token);
        return saving!;
    }

    /// <summary>Removes a price; its item falls back on what the catalogue says.</summary>
    public Task RemoveAsync(LocalPrice price, CancellationToken token = default) => DoAsync(store => store.RemoveAsync(price, token), token);

    /// <inheritdoc/>
    public Task StartAsync(CancellationToken cancellationToken) => DoAsync(_ => Task.CompletedTask, cancellationToken);

    /// <inheritdoc/>
    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    /// <inheritdoc/>
    public void Dispose() => _turn.Dispose();

    // One at a time, so that the catalogue put last is the newest.
    private async Task DoAsync(Func<LocalPriceStore, Task> act, CancellationToken token)
    {
        await _turn.WaitAsync(token);
        try
        {
            await using var scope = scopes.CreateAsyncScope();
            var store = scope.ServiceProvider.GetRequiredService<LocalPriceStore>();
            await act(store);
            var prices = await store.ListAsync(token);
            var files = await scope.ServiceProvider.GetRequiredService<SupplierPriceStore>().CurrentAsync(token);
            var units = DecidedUnit.Standing(await scope.ServiceProvider.GetRequiredService<OwnUnitStore>().ListAsync(token));
            if (!prices.SequenceEqual(Prices) || !files.SequenceEqual(FromFiles) || !units.SequenceEqual(Units))
            {
                (Prices, FromFiles, Units) = (prices, files, units);
                catalogues.Put(OwnHours.Over(OwnPrices.Over(_builtIn, prices, files), units));
                Changed?.Invoke();
            }
        }
        finally
        {
            _turn.Release();
        }
    }
}
