using System.Globalization;

namespace Estimator.Engine.Measures;

/// <summary>A share in hundredths. <c>default</c> is zero percent.</summary>
public readonly record struct Percent : IComparable<Percent>
{
    private readonly decimal _hundredths;

    private Percent(decimal hundredths) => _hundredths = hundredths;

    /// <summary>From hundredths: 35 is thirty-five percent.</summary>
    public static Percent FromHundredths(decimal hundredths) => new(hundredths);

    /// <summary>In hundredths: thirty-five percent is 35.</summary>
    public decimal ToHundredths() => _hundredths;

    /// <summary>As a factor: thirty-five percent is 0.35.</summary>
    public decimal ToFactor() => _hundredths / 100m;

    /// <inheritdoc/>
    public int CompareTo(Percent other) => _hundredths.CompareTo(other._hundredths);

    /// <summary>Whether the first is smaller.</summary>
    public static bool operator <(Percent a, Percent b) => a._hundredths < b._hundredths;

    /// <summary>Whether the first is greater.</summary>
    public static bool operator >(Percent a, Percent b) => a._hundredths > b._hundredths;

    /// <summary>Whether the first is at most as great.</summary>
    public static bool operator <=(Percent a, Percent b) => a._hundredths <= b._hundredths;

    /// <summary>Whether the first is at least as great.</summary>
    public static bool operator >=(Percent a, Percent b) => a._hundredths >= b._hundredths;

    /// <summary>The number with a percent sign, invariant.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{_hundredths:0.####}%");
}
