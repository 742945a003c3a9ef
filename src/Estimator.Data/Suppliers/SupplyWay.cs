namespace Estimator.Data.Suppliers;

/// <summary>How goods come from a supplier.</summary>
public enum SupplyWay
{
    /// <summary>The supplier brings them.</summary>
    Delivery = 1,

    /// <summary>Somebody fetches them at the counter; no delivery is charged.</summary>
    WillCall,
}
