namespace Estimator.Engine.Measures;

/// <summary>An electric current, in amperes. <c>default</c> is zero.</summary>
public readonly record struct Current : IComparable<Current>
{
    private readonly decimal _amperes;

    private Current(decimal value) => _amperes = value;

    /// <summary>Nothing.</summary>
    public static Current Zero => default;

    /// <summary>From amperes.</summary>
    public static Current FromAmperes(decimal value) => new(value);

    /// <summary>In amperes.</summary>
    public decimal ToAmperes() => _amperes;

    /// <inheritdoc/>
    public int CompareTo(Current other) => _amperes.CompareTo(other._amperes);

    /// <summary>Sum.</summary>
    public static Current operator +(Current a, Current b) => new(a._amperes + b._amperes);

    /// <summary>Difference.</summary>
    public static Current operator -(Current a, Current b) => new(a._amperes - b._amperes);

    /// <summary>A multiple.</summary>
    public static Current operator *(Current a, decimal times) => new(a._amperes * times);

    /// <summary>Whether the first is smaller.</summary>
    public static bool operator <(Current a, Current b) => a._amperes < b._amperes;

    /// <summary>Whether the first is greater.</summary>
    public static bool operator >(Current a, Current b) => a._amperes > b._amperes;

    /// <summary>Whether the first is at most as great.</summary>
    public static bool operator <=(Current a, Current b) => a._amperes <= b._amperes;

    /// <summary>Whether the first is at least as great.</summary>
    public static bool operator >=(Current a, Current b) => a._amperes >= b._amperes;

    /// <summary>The number with its unit, invariant.</summary>
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{_amperes:0.####} A");
}
