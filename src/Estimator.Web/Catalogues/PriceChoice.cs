namespace Estimator.Web.Catalogues;

/// <summary>Which items of the catalogue are shown.</summary>
public enum PriceChoice
{
    /// <summary>All that are bought.</summary>
    All = 1,

    /// <summary>Those with a price of one's own.</summary>
    Own,

    /// <summary>Those with samples alone.</summary>
    Sample,

    /// <summary>Those that nobody offers.</summary>
    None,
}
