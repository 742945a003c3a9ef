namespace Estimator.Engine.Purchase.Orders;

/// <summary>How far a purchase order is.</summary>
public enum OrderState
{
    /// <summary>Not given to the supplier yet.</summary>
    Draft = 1,

    /// <summary>Given to the supplier.</summary>
    Placed,

    /// <summary>Some of it came.</summary>
    PartlyReceived,

    /// <summary>All that was not cancelled came.</summary>
    Received,

    /// <summary>Nothing came, and nothing will.</summary>
    Cancelled,
}
