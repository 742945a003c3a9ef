namespace Estimator.Web.Orders;

/// <summary>How what is bought is divided among suppliers.</summary>
public enum SupplyWish
{
    /// <summary>Over any number of suppliers, at least cost.</summary>
    Split = 1,

    /// <summary>All from the one that costs least.</summary>
    One,

    /// <summary>From a preferred supplier where it asks little more.</summary>
    Preferred,
}
