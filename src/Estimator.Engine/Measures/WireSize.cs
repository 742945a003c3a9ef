using System.Collections.Immutable;

namespace Estimator.Engine.Measures;

/// <summary>A conductor size of the American wire gauge, ordered by thickness: 14 AWG is smaller than 12. <c>default</c> is 18 AWG.</summary>
/// <remarks>Runs from 18 AWG to 4/0, then 250 to 600 kcmil. Source: the sizes of NEC chapter 9 table 8.</remarks>
public readonly record struct WireSize : IComparable<WireSize>
{
    private static readonly ImmutableArray<string> Names =
    [
        "18", "16", "14", "12", "10", "8", "6", "4", "3", "2", "1", "1/0", "2/0", "3/0", "4/0", "250", "300", "350", "400", "500", "600",
    ];

    private readonly byte _rank;

    private WireSize(int rank) => _rank = (byte)rank;

    /// <summary>Every size, thinnest first.</summary>
    public static IEnumerable<WireSize> All => Enumerable.Range(0, Names.Length).Select(i => new WireSize(i));

    /// <summary>14 AWG.</summary>
    public static WireSize Awg14 => new(2);

    /// <summary>12 AWG.</summary>
    public static WireSize Awg12 => new(3);

    /// <summary>10 AWG.</summary>
    public static WireSize Awg10 => new(4);

    /// <summary>Reads a size by its trade name, such as 12, 2/0 or 250.</summary>
    public static Parsed<WireSize> Parse(string text)
    {
        var name = text.Trim().TrimStart('#');
        var rank = Names.IndexOf(name);
        return rank >= 0
            ? Parsed<WireSize>.Success(new WireSize(rank))
            : Parsed<WireSize>.Failure($"'{(text.Length > 20 ? text[..20] : text)}' is not a wire size; one of {string.Join(", ", Names)} is accepted.");
    }

    /// <summary>The next thicker size; the thickest answers itself.</summary>
    public WireSize Next() => _rank + 1 < Names.Length ? new WireSize(_rank + 1) : this;

    /// <inheritdoc/>
    public int CompareTo(WireSize other) => _rank.CompareTo(other._rank);

    /// <summary>Whether the first is thinner.</summary>
    public static bool operator <(WireSize a, WireSize b) => a._rank < b._rank;

    /// <summary>Whether the first is thicker.</summary>
    public static bool operator >(WireSize a, WireSize b) => a._rank > b._rank;

    /// <summary>Whether the first is at most as thick.</summary>
    public static bool operator <=(WireSize a, WireSize b) => a._rank <= b._rank;

    /// <summary>Whether the first is at least as thick.</summary>
    public static bool operator >=(WireSize a, WireSize b) => a._rank >= b._rank;

    /// <summary>The trade name: 14, 2/0, 250.</summary>
    public override string ToString() => Names[_rank];
}
