using System.Globalization;

namespace Estimator.Engine.Measures;

/// <summary>An amount of dollars. <c>default</c> is zero.</summary>
/// <remarks>
/// Nothing rounds by itself: <see cref="RoundToCents"/> rounds half away from zero, as a spreadsheet's ROUND does, and totals add rounded lines.
/// </remarks>
public readonly record struct Money : IComparable<Money>
{
    private readonly decimal _dollars;

    private Money(decimal dollars) => _dollars = dollars;

    /// <summary>No money.</summary>
    public static Money Zero => default;

    /// <summary>From dollars, unrounded.</summary>
    public static Money FromDollars(decimal dollars) => new(dollars);

    /// <summary>In dollars, as held.</summary>
    public decimal ToDollars() => _dollars;

    /// <summary>Rounded to cents, half away from zero.</summary>
    public Money RoundToCents() => new(decimal.Round(_dollars, 2, MidpointRounding.AwayFromZero));

    /// <inheritdoc/>
    public int CompareTo(Money other) => _dollars.CompareTo(other._dollars);

    /// <summary>Sum.</summary>
    public static Money operator +(Money a, Money b) => new(a._dollars + b._dollars);

    /// <summary>Difference.</summary>
    public static Money operator -(Money a, Money b) => new(a._dollars - b._dollars);

    /// <summary>A multiple, unrounded.</summary>
    public static Money operator *(Money a, decimal times) => new(a._dollars * times);

    /// <summary>Whether the first is smaller.</summary>
    public static bool operator <(Money a, Money b) => a._dollars < b._dollars;

    /// <summary>Whether the first is greater.</summary>
    public static bool operator >(Money a, Money b) => a._dollars > b._dollars;

    /// <summary>Whether the first is at most as great.</summary>
    public static bool operator <=(Money a, Money b) => a._dollars <= b._dollars;

    /// <summary>Whether the first is at least as great.</summary>
    public static bool operator >=(Money a, Money b) => a._dollars >= b._dollars;

    /// <summary>Dollars and cents, invariant, with a dollar sign.</summary>
    public override string ToString()
    {
        var cents = RoundToCents()._dollars;
        return string.Create(CultureInfo.InvariantCulture, $"{(cents < 0 ? "-" : "")}${Math.Abs(cents):#,0.00}");
    }
}
