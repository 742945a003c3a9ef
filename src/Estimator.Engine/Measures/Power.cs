namespace Estimator.Engine.Measures;

/// <summary>Apparent power as the code counts it, in volt-amperes. <c>default</c> is zero.</summary>
public readonly record struct Power : IComparable<Power>
{
    private readonly decimal _voltAmperes;

    private Power(decimal value) => _voltAmperes = value;

    /// <summary>Nothing.</summary>
    public static Power Zero => default;

    /// <summary>From volt-amperes.</summary>
    public static Power FromVoltAmperes(decimal value) => new(value);

    /// <summary>In volt-amperes.</summary>
    public decimal ToVoltAmperes() => _voltAmperes;

    /// <inheritdoc/>
    public int CompareTo(Power other) => _voltAmperes.CompareTo(other._voltAmperes);

    /// <summary>Sum.</summary>
    public static Power operator +(Power a, Power b) => new(a._voltAmperes + b._voltAmperes);

    /// <summary>Difference.</summary>
    public static Power operator -(Power a, Power b) => new(a._voltAmperes - b._voltAmperes);

    /// <summary>A multiple.</summary>
    public static Power operator *(Power a, decimal times) => new(a._voltAmperes * times);

    /// <summary>Whether the first is smaller.</summary>
    public static bool operator <(Power a, Power b) => a._voltAmperes < b._voltAmperes;

    /// <summary>Whether the first is greater.</summary>
    public static bool operator >(Power a, Power b) => a._voltAmperes > b._voltAmperes;

    /// <summary>Whether the first is at most as great.</summary>
    public static bool operator <=(Power a, Power b) => a._voltAmperes <= b._voltAmperes;

    /// <summary>Whether the first is at least as great.</summary>
    public static bool operator >=(Power a, Power b) => a._voltAmperes >= b._voltAmperes;

    /// <summary>The number with its unit, invariant.</summary>
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{_voltAmperes:0.####} VA");
}
