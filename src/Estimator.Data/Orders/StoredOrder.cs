using System.Collections.Immutable;
using Estimator.Data.Suppliers;
using Estimator.Engine.Catalogue;
using Estimator.Engine.Purchase.Orders;

namespace Estimator.Data.Orders;

/// <summary>A purchase order as it is stored.</summary>
public sealed record StoredOrder
{
    /// <summary>Its number in the company; 0 for a new one.</summary>
    public int Id { get; init; }

    /// <summary>Number of the purchase order as the supplier reads it; no two orders of a company share one. Empty for a new one: it gets the next.</summary>
    public string Number { get; init; } = "";

    /// <summary>The supplier.</summary>
    public required int SupplierId { get; init; }

    /// <summary>Its name when the order was made.</summary>
    public required string Supplier { get; init; }

    /// <summary>The jobs, id and name.</summary>
    public required ImmutableArray<(string Id, string Name)> Jobs { get; init; }

    /// <summary>The phase of the work that it is for; null where it is for all.</summary>
    public WorkPhase? Phase { get; init; }

    /// <summary>The day by which it is needed; null where none was said.</summary>
    public DateOnly? NeedBy { get; init; }

    /// <summary>How the goods come.</summary>
    public SupplyWay Way { get; init; } = SupplyWay.Delivery;

    /// <summary>Where to bring it, whom to call.</summary>
    public string Note { get; init; } = "";

    /// <summary>Lines and what happened.</summary>
    public required PurchaseOrder Order { get; init; }

    /// <summary>Who noted each event, and when, in the order of the events.</summary>
    public ImmutableArray<(string Who, DateTimeOffset At)> Noted { get; init; } = [];

    /// <summary>Who made it.</summary>
    public string Who { get; init; } = "";

    /// <summary>When, UTC.</summary>
    public DateTimeOffset At { get; init; }

    /// <summary>Version that it was read at; 0 for a new one.</summary>
    public int Version { get; init; }
}
