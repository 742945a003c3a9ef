namespace Estimator.Engine.Purchase.Orders;

/// <summary>What happened to a purchase order.</summary>
public enum OrderEventKind
{
    /// <summary>It was given to the supplier.</summary>
    Placed = 1,

    /// <summary>The supplier said when it comes.</summary>
    Confirmed,

    /// <summary>Packs of a line come later.</summary>
    BackOrdered,

    /// <summary>Packs of a line came.</summary>
    Received,

    /// <summary>Something else came in place of packs of a line.</summary>
    Substituted,

    /// <summary>Packs of a line are wanted no more.</summary>
    Cancelled,

    /// <summary>Packs of a line went back.</summary>
    Returned,

    /// <summary>The supplier gives money back.</summary>
    Credited,

    /// <summary>The supplier charges for taking packs back.</summary>
    RestockingCharged,
}
