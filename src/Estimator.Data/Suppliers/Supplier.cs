using Estimator.Engine.Measures;
using Estimator.Engine.Purchase.PriceFiles;

namespace Estimator.Data.Suppliers;

/// <summary>Somebody who sells to the company.</summary>
public sealed record Supplier
{
    /// <summary>Its number in the company; 0 for a new one.</summary>
    public int Id { get; init; }

    /// <summary>Its name; no two suppliers of a company share one.</summary>
    public required string Name { get; init; }

    /// <summary>The company's account there.</summary>
    public string Account { get; init; } = "";

    /// <summary>Whom to call or write to.</summary>
    public string Contact { get; init; } = "";

    /// <summary>Hours of the counter, terms, what else to know.</summary>
    public string Note { get; init; } = "";

    /// <summary>How goods usually come.</summary>
    public SupplyWay Way { get; init; } = SupplyWay.Delivery;

    /// <summary>What a delivery costs.</summary>
    public Money Delivery { get; init; }

    /// <summary>The least that an order must come to; zero where any will do.</summary>
    public Money Minimum { get; init; }

    /// <summary>Goods from which delivery costs nothing; null where it always costs.</summary>
    public Money? FreeFrom { get; init; }

    /// <summary>Whether the company buys there; else its prices are used no more.</summary>
    public bool Active { get; init; } = true;

    /// <summary>Which heading of its price files says what, as last used.</summary>
    public ColumnMatching Matching { get; init; } = ColumnMatching.None;

    /// <summary>Version that it was read at; 0 for a new one.</summary>
    public int Version { get; init; }
}
