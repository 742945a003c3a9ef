namespace Estimator.Browser.Tests;

/// <summary>What the pages are looked at on.</summary>
public enum Screen
{
    /// <summary>1440 pixels wide.</summary>
    Desk = 1,

    /// <summary>390 pixels wide.</summary>
    Phone,
}
