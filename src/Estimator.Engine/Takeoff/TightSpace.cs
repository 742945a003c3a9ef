namespace Estimator.Engine.Takeoff;

/// <summary>A space in which cable is pulled more slowly.</summary>
public enum TightSpace
{
    /// <summary>None.</summary>
    None,

    /// <summary>An attic that is low, insulated or hot.</summary>
    Attic,

    /// <summary>A crawl space.</summary>
    Crawl,

    /// <summary>A crawl space too low to sit in.</summary>
    LowCrawl,
}
