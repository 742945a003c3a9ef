namespace Estimator.Engine.House;

/// <summary>What a local amendment does.</summary>
public enum AmendmentKind
{
    /// <summary>Asks for more than the edition.</summary>
    Raise = 1,

    /// <summary>Asks for less than the edition.</summary>
    Relax,

    /// <summary>Puts another figure in place of the edition's.</summary>
    Replace,

    /// <summary>Adds a rule that the edition does not have.</summary>
    Add,

    /// <summary>Forces a wiring method.</summary>
    WiringMethod,
}
