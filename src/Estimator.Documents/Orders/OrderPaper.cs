using System.Collections.Immutable;
using Estimator.Engine.Purchase.Orders;

namespace Estimator.Documents.Orders;

/// <summary>A purchase order as a supplier reads it.</summary>
/// <param name="Number">Number of the order.</param>
/// <param name="Supplier">The supplier.</param>
/// <param name="Order">The lines and what happened.</param>
public sealed record OrderPaper(string Number, string Supplier, PurchaseOrder Order)
{
    /// <summary>The buyer's account there.</summary>
    public string Account { get; init; } = "";

    /// <summary>Whom it goes to.</summary>
    public string Contact { get; init; } = "";

    /// <summary>Names of the jobs.</summary>
    public ImmutableArray<string> Jobs { get; init; } = [];

    /// <summary>The phase of the work, in words; empty for all.</summary>
    public string Phase { get; init; } = "";

    /// <summary>The day by which it is needed.</summary>
    public DateOnly? NeedBy { get; init; }

    /// <summary>How it comes, in words.</summary>
    public string Way { get; init; } = "";

    /// <summary>What else the supplier must know.</summary>
    public string Note { get; init; } = "";
}
