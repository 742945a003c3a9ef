namespace Estimator.Engine.Measures;

/// <summary>A floor area, in square feet. <c>default</c> is zero.</summary>
public readonly record struct Area : IComparable<Area>
{
    private readonly decimal _squareFeet;

    private Area(decimal value) => _squareFeet = value;

    /// <summary>Nothing.</summary>
    public static Area Zero => default;

    /// <summary>From square feet.</summary>
    public static Area FromSquareFeet(decimal value) => new(value);

    /// <summary>In square feet.</summary>
    public decimal ToSquareFeet() => _squareFeet;

    /// <inheritdoc/>
    public int CompareTo(Area other) => _squareFeet.CompareTo(other._squareFeet);

    /// <summary>Sum.</summary>
    public static Area operator +(Area a, Area b) => new(a._squareFeet + b._squareFeet);

    /// <summary>Difference.</summary>
    public static Area operator -(Area a, Area b) => new(a._squareFeet - b._squareFeet);

    /// <summary>A multiple.</summary>
    public static Area operator *(Area a, decimal times) => new(a._squareFeet * times);

    /// <summary>Whether the first is smaller.</summary>
    public static bool operator <(Area a, Area b) => a._squareFeet < b._squareFeet;

    /// <summary>Whether the first is greater.</summary>
    public static bool operator >(Area a, Area b) => a._squareFeet > b._squareFeet;

    /// <summary>Whether the first is at most as great.</summary>
    public static bool operator <=(Area a, Area b) => a._squareFeet <= b._squareFeet;

    /// <summary>Whether the first is at least as great.</summary>
    public static bool operator >=(Area a, Area b) => a._squareFeet >= b._squareFeet;

    /// <summary>The number with its unit, invariant.</summary>
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{_squareFeet:0.####} sq ft");
}
