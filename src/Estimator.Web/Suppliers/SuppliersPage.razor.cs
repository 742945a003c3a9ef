using System.Collections.Immutable;
using Estimator.Data.Suppliers;
using Estimator.Web.Catalogues;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Suppliers;

/// <summary>The company's suppliers.</summary>
public sealed partial class SuppliersPage
{
    private ImmutableArray<Supplier>? _suppliers;
    private SupplierDraft? _draft;

    [Inject]
    private SupplierStore Store { get; set; } = default!;

    [Inject]
    private LocalPriceShelf Shelf { get; set; } = default!;

    [Inject]
    private TimeProvider Clock { get; set; } = default!;

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync() => _suppliers = await Store.ListAsync();

    private ImmutableArray<SupplierPrice> Prices(Supplier supplier) => [.. Shelf.FromFiles.Where(p => p.SupplierId == supplier.Id)];

    private string Newest(Supplier supplier) =>
        Prices(supplier) is { IsEmpty: false } prices ? SupplierWords.Age(prices.Max(p => p.QuotedOn), DateOnly.FromDateTime(Clock.GetLocalNow().Date)) : "none yet";

    private Task NewAsync()
    {
        _draft = new SupplierDraft();
        StateHasChanged();
        return Task.CompletedTask;
    }

    private void Take(Supplier supplier) => _draft = SupplierDraft.Of(supplier);

    private async Task SavedAsync()
    {
        _draft = null;
        _suppliers = await Store.ListAsync();
        await Shelf.RefreshAsync();
    }
}
