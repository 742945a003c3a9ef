using System.Collections.Immutable;
using Estimator.Data.Databases;
using Estimator.Data.Orders;
using Estimator.Engine.Purchase.Orders;
using Estimator.Web.Jobs;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Orders;

/// <summary>A purchase order: what is ordered, what came, and what happened.</summary>
public sealed partial class PurchaseOrderPage
{
    private StoredOrder? _stored;
    private bool _missing;
    private string? _problem;
    private int _line;

    /// <summary>Number of the order in the company.</summary>
    [Parameter]
    public int Id { get; set; }

    [Inject]
    private OrderStore Store { get; set; } = default!;

    [Inject]
    private OrderDesk Desk { get; set; } = default!;

    /// <summary>Address of an order.</summary>
    public static string Address(int id) => FormattableString.Invariant($"/orders/{id}");

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        _stored = await Store.LoadAsync(Id);
        _missing = _stored is null;
    }

    private Task PlaceAsync() => NoteAsync([new OrderEvent(OrderEventKind.Placed, Desk.Today)]);

    private async Task NoteAsync(ImmutableArray<OrderEvent> happened)
    {
        try
        {
            Take(await Store.NoteAsync(_stored!.Id, _stored.Version, happened, JobDesk.Me));
        }
        catch (ArgumentException refused)
        {
            _problem = Sentence(refused);
        }

        StateHasChanged();
    }

    private void Take(Saving<StoredOrder> saving)
    {
        (_stored, _line) = (saving.Stored, 0);
        _problem = saving.Saved ? null : "Somebody else changed this order meanwhile; nothing of yours was written. What they noted stands below.";
        StateHasChanged();
    }

    private void Refuse(string problem) => _problem = problem;

    /// <summary>The sentence of a refusal, without the name of the parameter that the platform adds.</summary>
    internal static string Sentence(ArgumentException refused) => refused.Message.Split(" (Parameter '")[0];
}
