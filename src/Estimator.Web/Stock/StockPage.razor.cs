using System.Globalization;
using Estimator.Data.Databases;
using Estimator.Data.Stock;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Measures;
using Estimator.Web.Catalogues;
using Estimator.Web.Figures;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Stock;

/// <summary>What the company has on its shelf.</summary>
public sealed partial class StockPage
{
    private const string Cable = "cable";

    private Shelf? _shelf;
    private string _item = "";
    private string _amount = "";
    private string _label = "";
    private string? _problem;

    [Inject]
    private StockStore Store { get; set; } = default!;

    [Inject]
    private CatalogueShelf Catalogues { get; set; } = default!;

    private CatalogueItem? Item => Catalogues.Current.Parts.Items.FirstOrDefault(i => i.IsBought && (i.Description.Equals(_item.Trim(), StringComparison.OrdinalIgnoreCase) || i.Id == _item.Trim()));

    private bool IsCable => Item?.Category == Cable;

    /// <summary>A length of cable: feet and inches, or feet alone.</summary>
    internal static Parsed<Length> Feet(string? text)
    {
        var typed = (text ?? "").Trim();
        var read = decimal.TryParse(typed, NumberStyles.AllowDecimalPoint | NumberStyles.AllowThousands, CultureInfo.InvariantCulture, out var feet) && feet <= StockLimits.Piece.ToFeet()
            ? Parsed<Length>.Success(Length.FromFeet(feet))
            : Length.Parse(typed);
        return read.Ok && (read.Value < Length.Zero || read.Value > StockLimits.Piece) ? Parsed<Length>.Failure($"Found “{PriceText.Short(text)}”; a length up to {StockLimits.Piece} is accepted.") : read;
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync() => _shelf = await Store.LoadAsync();

    private static Parsed<decimal> Count(string? text) =>
        decimal.TryParse((text ?? "").Trim(), NumberStyles.AllowDecimalPoint | NumberStyles.AllowThousands, CultureInfo.InvariantCulture, out var count) && count is >= 0 and <= StockLimits.Count
            ? Parsed<decimal>.Success(count)
            : Parsed<decimal>.Failure($"Found “{PriceText.Short(text)}”; a count from 0 to {American.Number(StockLimits.Count)} is accepted.");

    private string Name(string item) => Catalogues.Current.Parts.Find(item)?.Description ?? item;

    private async Task PutAsync()
    {
        if (Item is not { } item)
        {
            _problem = $"Found “{PriceText.Short(_item)}”; the name of an item of the catalogue is accepted, such as those offered while you type.";
        }
        else if (IsCable)
        {
            var feet = Feet(_amount);
            _problem = feet.Problem ?? (feet.Value == Length.Zero ? "Nothing is left on it; a length above zero is accepted." : _label.Trim().Length == 0 ? "A label is needed, such as the van or the shelf where it lies." : null);
            await (_problem is null ? SaveAsync(new ShelfPiece(0, item.Id, _label, feet.Value, 0)) : Task.CompletedTask);
        }
        else
        {
            var (count, had) = (Count(_amount), _shelf!.Counts.FirstOrDefault(c => c.Item == item.Id));
            _problem = count.Problem;
            await (_problem is null ? SaveAsync(new ShelfCount(item.Id, (had?.Count ?? 0) + count.Value, had?.Version ?? 0)) : Task.CompletedTask);
        }

        if (_problem is null)
        {
            (_amount, _label) = ("", "");
        }

        StateHasChanged();
    }

    private async Task ChangeAsync(ShelfPiece piece, string? text)
    {
        var feet = Feet(text);
        _problem = feet.Problem;
        await (feet.Ok ? SaveAsync(piece with { Length = feet.Value }) : Task.CompletedTask);
    }

    private async Task ChangeAsync(ShelfCount count, string? text)
    {
        var read = Count(text);
        _problem = read.Problem;
        await (read.Ok ? SaveAsync(count with { Count = read.Value }) : Task.CompletedTask);
    }

    private async Task SaveAsync(ShelfPiece piece) => await ShowAsync(await Store.SaveAsync(piece));

    private async Task SaveAsync(ShelfCount count) => await ShowAsync(await Store.SaveAsync(count));

    private async Task ShowAsync<T>(Saving<T> saving)
    {
        _problem = saving.Saved ? null : "Somebody else counted meanwhile; nothing of yours was written. What they counted stands below.";
        _shelf = await Store.LoadAsync();
    }
}
