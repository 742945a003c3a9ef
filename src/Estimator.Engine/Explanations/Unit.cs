namespace Estimator.Engine.Explanations;

/// <summary>The unit of a node's value.</summary>
public enum Unit
{
    /// <summary>A number of things.</summary>
    Each = 1,

    /// <summary>A length in whole nanometres; printed in feet and inches.</summary>
    Length,

    /// <summary>Feet as a decimal number.</summary>
    Feet,

    /// <summary>Square feet.</summary>
    SquareFeet,

    /// <summary>Cubic inches.</summary>
    CubicInches,

    /// <summary>Hours.</summary>
    Hours,

    /// <summary>Dollars.</summary>
    Dollars,

    /// <summary>Amperes.</summary>
    Amperes,

    /// <summary>Volt-amperes.</summary>
    VoltAmperes,

    /// <summary>Volts.</summary>
    Volts,

    /// <summary>Ohms.</summary>
    Ohms,

    /// <summary>Hundredths.</summary>
    Percent,

    /// <summary>A plain factor, or a rate whose unit the label says.</summary>
    Factor,
}
