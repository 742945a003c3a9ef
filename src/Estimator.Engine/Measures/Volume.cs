namespace Estimator.Engine.Measures;

/// <summary>The inside of a box, in cubic inches. <c>default</c> is zero.</summary>
public readonly record struct Volume : IComparable<Volume>
{
    private readonly decimal _cubicInches;

    private Volume(decimal value) => _cubicInches = value;

    /// <summary>Nothing.</summary>
    public static Volume Zero => default;

    /// <summary>From cubic inches.</summary>
    public static Volume FromCubicInches(decimal value) => new(value);

    /// <summary>In cubic inches.</summary>
    public decimal ToCubicInches() => _cubicInches;

    /// <inheritdoc/>
    public int CompareTo(Volume other) => _cubicInches.CompareTo(other._cubicInches);

    /// <summary>Sum.</summary>
    public static Volume operator +(Volume a, Volume b) => new(a._cubicInches + b._cubicInches);

    /// <summary>Difference.</summary>
    public static Volume operator -(Volume a, Volume b) => new(a._cubicInches - b._cubicInches);

    /// <summary>A multiple.</summary>
    public static Volume operator *(Volume a, decimal times) => new(a._cubicInches * times);

    /// <summary>Whether the first is smaller.</summary>
    public static bool operator <(Volume a, Volume b) => a._cubicInches < b._cubicInches;

    /// <summary>Whether the first is greater.</summary>
    public static bool operator >(Volume a, Volume b) => a._cubicInches > b._cubicInches;

    /// <summary>Whether the first is at most as great.</summary>
    public static bool operator <=(Volume a, Volume b) => a._cubicInches <= b._cubicInches;

    /// <summary>Whether the first is at least as great.</summary>
    public static bool operator >=(Volume a, Volume b) => a._cubicInches >= b._cubicInches;

    /// <summary>The number with its unit, invariant.</summary>
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{_cubicInches:0.####} cu in");
}
