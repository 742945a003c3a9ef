using System.Collections.Immutable;
using Estimator.Data.Prices;
using Estimator.Engine.Catalogue;
using Estimator.Web.Figures;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Catalogues;

/// <summary>Adds, changes and removes the own prices of an item.</summary>
public sealed partial class PriceEditor
{
    private PriceDraft _draft = default!;
    private IReadOnlyDictionary<string, string> _problems = ImmutableDictionary<string, string>.Empty;
    private string? _other;

    /// <summary>The item.</summary>
    [Parameter, EditorRequired]
    public CatalogueItem Item { get; set; } = default!;

    /// <summary>The day today.</summary>
    [Parameter, EditorRequired]
    public DateOnly Today { get; set; }

    /// <summary>Puts the item away.</summary>
    [Parameter]
    public EventCallback Close { get; set; }

    [Inject]
    private LocalPriceShelf Shelf { get; set; } = default!;

    [Inject]
    private CatalogueShelf Catalogues { get; set; } = default!;

    private ImmutableArray<LocalPrice> Own => [.. Shelf.Prices.Where(p => p.Item == Item.Id)];

    /// <inheritdoc/>
    protected override void OnInitialized() => _draft = Own is [var only] ? PriceDraft.Of(only, Today) : Blank();

    private PriceDraft Blank() => PriceDraft.New(Item.Id, Catalogues.Current.Parts.OffersFor(Item.Id).Select(o => o.PackSize).FirstOrDefault(1), Today);

    private string? Problem(string field) => _problems.GetValueOrDefault(field);

    private void Change(LocalPrice price) => (_draft, _problems, _other) = (PriceDraft.Of(price, Today), ImmutableDictionary<string, string>.Empty, null);

    // An act does not draw its part anew by itself.
    private async Task SaveAsync()
    {
        await TrySaveAsync();
        StateHasChanged();
    }

    private async Task TrySaveAsync()
    {
        (var price, _problems) = _draft.Read(Today);
        _other = null;
        if (price is null)
        {
            return;
        }

        var saving = await Shelf.SaveAsync(price);
        if (!saving.Saved)
        {
            _other = $"{saving.Stored.Supplier} has a price for this pack already: {American.Dollars(saving.Stored.Price.ToDollars())} of {American.Day(saving.Stored.AsOf)}. Nothing was changed; choose Change beside it to write over it.";
            return;
        }

        // Another supplier or pack than before is another price: the old one goes, as the user changed it.
        if (_draft.Old is { } old && (old.Supplier, old.PackSize) != (saving.Stored.Supplier, saving.Stored.PackSize))
        {
            await Shelf.RemoveAsync(old);
        }

        _draft = Blank();
    }

    private async Task RemoveAsync(LocalPrice price)
    {
        await Shelf.RemoveAsync(price);
        Change(price);
        _draft = Blank();
    }
}
