using Estimator.Data.Suppliers;
using Estimator.Documents.Prices;
using Estimator.Web.Catalogues;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace Estimator.Web.Suppliers;

/// <summary>Reads a price file of a supplier: choose, match columns, look through, write.</summary>
public sealed partial class PriceFilePage : IDisposable
{
    private readonly CancellationTokenSource _gone = new();
    private Supplier? _supplier;
    private PriceFileDesk? _desk;
    private bool _missing;
    private string? _problem;
    private string? _said;
    private string _working = "";
    private int _version;

    /// <summary>Number of the supplier.</summary>
    [Parameter]
    public int Id { get; set; }

    [Inject]
    private SupplierStore Suppliers { get; set; } = default!;

    [Inject]
    private SupplierPriceStore Prices { get; set; } = default!;

    [Inject]
    private LocalPriceShelf Shelf { get; set; } = default!;

    [Inject]
    private CatalogueShelf Catalogues { get; set; } = default!;

    [Inject]
    private TimeProvider Clock { get; set; } = default!;

    /// <summary>Address of the page for a supplier.</summary>
    public static string Address(int supplier) => FormattableString.Invariant($"/suppliers/{supplier}/prices");

    /// <inheritdoc/>
    public void Dispose()
    {
        _gone.Cancel();
        _gone.Dispose();
        _desk?.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        _supplier = (await Suppliers.ListAsync(_gone.Token)).FirstOrDefault(s => s.Id == Id);
        _missing = _supplier is null;
    }

    private async Task TakeFileAsync(InputFileChangeEventArgs e)
    {
        (_problem, _said, _working) = (null, null, $"Taking in {PriceText.Short(e.File.Name)}…");
        StateHasChanged();
        if (e.File.Size > PriceFileLimits.Bytes)
        {
            (_problem, _working) = ($"{e.File.Name} has {American.Number(e.File.Size)} bytes; up to {American.Number(PriceFileLimits.Bytes)} are accepted. Ask for a file of the items that you buy.", "");
            return;
        }

        var path = Path.GetTempFileName();
        try
        {
            await using (var to = File.Create(path))
            {
                await e.File.OpenReadStream(PriceFileLimits.Bytes, _gone.Token).CopyToAsync(to, _gone.Token);
            }

            _desk = await PriceFileDesk.OpenAsync(path, e.File.Name, _supplier!, Prices, _gone.Token);
        }
        catch (InvalidDataException wrong)
        {
            _problem = $"{e.File.Name}: {wrong.Message}";
        }
        finally
        {
            _working = "";
            if (_desk is null)
            {
                File.Delete(path);
            }
        }
    }

    private async Task LookAsync()
    {
        (_problem, _said) = (null, null);
        try
        {
            await _desk!.LookAsync(Catalogues.Current.Parts, _gone.Token);
        }
        catch (InvalidDataException wrong)
        {
            _problem = $"{_desk!.Name}: {wrong.Message}";
        }

        StateHasChanged();
    }

    private async Task WriteAsync(bool withdraw)
    {
        var written = await Prices.WriteAsync(_desk!.ToWrite(withdraw, JobDesk.Me, DateOnly.FromDateTime(Clock.GetLocalNow().Date)), _gone.Token);
        if (written is null)
        {
            _problem = "Another price file of this supplier was written meanwhile; nothing of yours was. Choose the file again to see what it changes now.";
        }
        else
        {
            _said = $"{American.Count(written.Prices, "price")} of {written.FileName} written{(written.Withdrawn > 0 ? $", {American.Count(written.Withdrawn, "pack")} withdrawn" : "")}. Open jobs are priced again; saved revisions keep theirs.";
            await Shelf.RefreshAsync(_gone.Token);
        }

        PutAway();
        _supplier = (await Suppliers.ListAsync(_gone.Token)).FirstOrDefault(s => s.Id == Id);
        _version++;
        StateHasChanged();
    }

    private void PutAway()
    {
        _desk?.Dispose();
        _desk = null;
    }
}
