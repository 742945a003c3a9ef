namespace Estimator.Engine.Measures;

/// <summary>Time of one person at work, in decimal hours. <c>default</c> is zero.</summary>
public readonly record struct LaborTime : IComparable<LaborTime>
{
    private readonly decimal _hours;

    private LaborTime(decimal value) => _hours = value;

    /// <summary>Nothing.</summary>
    public static LaborTime Zero => default;

    /// <summary>From hours.</summary>
    public static LaborTime FromHours(decimal value) => new(value);

    /// <summary>In hours.</summary>
    public decimal ToHours() => _hours;

    /// <inheritdoc/>
    public int CompareTo(LaborTime other) => _hours.CompareTo(other._hours);

    /// <summary>Sum.</summary>
    public static LaborTime operator +(LaborTime a, LaborTime b) => new(a._hours + b._hours);

    /// <summary>Difference.</summary>
    public static LaborTime operator -(LaborTime a, LaborTime b) => new(a._hours - b._hours);

    /// <summary>A multiple.</summary>
    public static LaborTime operator *(LaborTime a, decimal times) => new(a._hours * times);

    /// <summary>Whether the first is smaller.</summary>
    public static bool operator <(LaborTime a, LaborTime b) => a._hours < b._hours;

    /// <summary>Whether the first is greater.</summary>
    public static bool operator >(LaborTime a, LaborTime b) => a._hours > b._hours;

    /// <summary>Whether the first is at most as great.</summary>
    public static bool operator <=(LaborTime a, LaborTime b) => a._hours <= b._hours;

    /// <summary>Whether the first is at least as great.</summary>
    public static bool operator >=(LaborTime a, LaborTime b) => a._hours >= b._hours;

    /// <summary>The number with its unit, invariant.</summary>
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{_hours:0.####} h");
}
