namespace Estimator.Engine.Controls;

/// <summary>Which part of a device a control acts on.</summary>
public enum LoadPart
{
    /// <summary>All of it.</summary>
    Whole = 1,

    /// <summary>The fan of a ceiling fan.</summary>
    Fan,

    /// <summary>The light of a ceiling fan.</summary>
    Light,

    /// <summary>The switched half of a receptacle.</summary>
    SwitchedHalf,
}
