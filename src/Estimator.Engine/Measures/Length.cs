using System.Globalization;

namespace Estimator.Engine.Measures;

/// <summary>A distance. <c>default</c> is zero.</summary>
/// <remarks>
/// Holds whole nanometres, so that 1/64 in (396,875 nm) and 1 mm are both exact. Range about 9.2 million km.
/// Optimisers use <see cref="ToSixteenths"/>, whole sixteenths of an inch.
/// </remarks>
public readonly partial record struct Length : IComparable<Length>
{
    private const long NanometresPerInch = 25_400_000;
    private const long NanometresPerFoot = 12 * NanometresPerInch;
    private const long NanometresPerSixteenth = NanometresPerInch / 16;

    private readonly long _nanometres;

    private Length(long nanometres) => _nanometres = nanometres;

    /// <summary>No length.</summary>
    public static Length Zero => default;

    /// <summary>A length from whole nanometres.</summary>
    public static Length FromNanometres(long nanometres) => new(nanometres);

    /// <summary>A length from feet, rounded to the nanometre, half away from zero.</summary>
    /// <exception cref="OverflowException">The length is beyond the range of the type.</exception>
    public static Length FromFeet(decimal feet) => FromDecimal(feet * NanometresPerFoot);

    /// <summary>A length from inches, rounded to the nanometre, half away from zero.</summary>
    /// <exception cref="OverflowException">The length is beyond the range of the type.</exception>
    public static Length FromInches(decimal inches) => FromDecimal(inches * NanometresPerInch);

    /// <summary>A length from metres, rounded to the nanometre, half away from zero.</summary>
    /// <exception cref="OverflowException">The length is beyond the range of the type.</exception>
    public static Length FromMetres(decimal metres) => FromDecimal(metres * 1_000_000_000m);

    /// <summary>A length from whole sixteenths of an inch, the unit of the optimisers. Exact.</summary>
    public static Length FromSixteenths(long sixteenths) => new(checked(sixteenths * NanometresPerSixteenth));

    /// <summary>Whole nanometres. Exact.</summary>
    public long ToNanometres() => _nanometres;

    /// <summary>Feet, to the precision of <see cref="decimal"/>.</summary>
    public decimal ToFeet() => (decimal)_nanometres / NanometresPerFoot;

    /// <summary>Inches, to the precision of <see cref="decimal"/>.</summary>
    public decimal ToInches() => (decimal)_nanometres / NanometresPerInch;

    /// <summary>Whole sixteenths of an inch, rounded half away from zero.</summary>
    public int ToSixteenths() => checked((int)FloorDivide(_nanometres, NanometresPerSixteenth));

    /// <summary>The length without its sign.</summary>
    public Length Abs() => new(Math.Abs(_nanometres));

    /// <summary>The lesser of two lengths.</summary>
    public static Length Min(Length a, Length b) => a <= b ? a : b;

    /// <summary>The greater of two lengths.</summary>
    public static Length Max(Length a, Length b) => a >= b ? a : b;

    /// <inheritdoc/>
    public int CompareTo(Length other) => _nanometres.CompareTo(other._nanometres);

    /// <summary>Sum.</summary>
    public static Length operator +(Length a, Length b) => new(checked(a._nanometres + b._nanometres));

    /// <summary>Difference.</summary>
    public static Length operator -(Length a, Length b) => new(checked(a._nanometres - b._nanometres));

    /// <summary>Negation.</summary>
    public static Length operator -(Length a) => new(checked(-a._nanometres));

    /// <summary>A whole multiple.</summary>
    public static Length operator *(Length a, long times) => new(checked(a._nanometres * times));

    /// <summary>Whether the first is shorter.</summary>
    public static bool operator <(Length a, Length b) => a._nanometres < b._nanometres;

    /// <summary>Whether the first is longer.</summary>
    public static bool operator >(Length a, Length b) => a._nanometres > b._nanometres;

    /// <summary>Whether the first is at most as long.</summary>
    public static bool operator <=(Length a, Length b) => a._nanometres <= b._nanometres;

    /// <summary>Whether the first is at least as long.</summary>
    public static bool operator >=(Length a, Length b) => a._nanometres >= b._nanometres;

    /// <summary>Feet and inches to the sixteenth, as a tape reads: <c>12' 6 1/2"</c>.</summary>
    public override string ToString()
    {
        var sixteenths = (long)ToSixteenths();
        var sign = sixteenths < 0 ? "-" : "";
        sixteenths = Math.Abs(sixteenths);
        var (feet, rest) = (sixteenths / 192, sixteenths % 192);
        var (inches, part) = (rest / 16, rest % 16);
        var denominator = 16;
        while (part > 0 && part % 2 == 0)
        {
            (part, denominator) = (part / 2, denominator / 2);
        }

        var fraction = part == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $" {part}/{denominator}");
        return string.Create(CultureInfo.InvariantCulture, $"{sign}{feet}' {inches}{fraction}\"");
    }

    private static Length FromDecimal(decimal nanometres) =>
        new(decimal.ToInt64(decimal.Round(nanometres, 0, MidpointRounding.AwayFromZero)));

    private static long FloorDivide(long value, long unit)
    {
        var half = unit / 2;
        return value >= 0 ? (value + half) / unit : -((-value + half) / unit);
    }
}
