using System.Collections.Immutable;
using Estimator.Data.Prices;
using Estimator.Engine.Catalogue;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Catalogues;

/// <summary>The items that can be bought, each with its price: a sample or one's own.</summary>
public sealed partial class CataloguePage : IDisposable
{
    private const int MostShown = 60;

    private string _text = "";
    private PriceChoice _choice = PriceChoice.All;
    private string? _item;

    [Inject]
    private CatalogueShelf Shelves { get; set; } = default!;

    [Inject]
    private LocalPriceShelf Shelf { get; set; } = default!;

    [Inject]
    private TimeProvider Clock { get; set; } = default!;

    private PricedCatalogue Catalogue => Shelves.Current;

    private DateOnly Today => DateOnly.FromDateTime(Clock.GetLocalNow().Date);

    private List<CatalogueItem> Items => [.. Catalogue.Parts.Items.Where(i => i.IsBought && Fits(i.Description) && Chosen(i.Id))];

    /// <inheritdoc/>
    public void Dispose() => Shelf.Changed -= Redraw;

    /// <inheritdoc/>
    protected override void OnInitialized() => Shelf.Changed += Redraw;

    private static string Words(PriceChoice choice) => choice switch
    {
        PriceChoice.All => "All",
        PriceChoice.Own => "My prices",
        PriceChoice.Sample => "Samples",
        PriceChoice.None => "No price",
        _ => throw new ArgumentOutOfRangeException(nameof(choice), choice, "No such choice."),
    };

    private void Search(string? text) => _text = text ?? "";

    private void Take(string item) => _item = item;

    // Every word must be there, in any order.
    private bool Fits(string description) => _text.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(w => description.Contains(w, StringComparison.OrdinalIgnoreCase));

    private bool Chosen(string item) => _choice switch
    {
        PriceChoice.Own => Catalogue.Parts.OffersFor(item).Any(o => !o.IsSample),
        PriceChoice.Sample => Catalogue.Parts.OffersFor(item).Any(o => o.IsSample),
        PriceChoice.None => !Catalogue.Parts.OffersFor(item).Any(),
        _ => true,
    };

    private ImmutableArray<LocalPrice> OwnOf(string item) => [.. Shelf.Prices.Where(p => p.Item == item)];

    private void Redraw() => _ = InvokeAsync(StateHasChanged);
}
