using System.Numerics;

namespace Estimator.Engine.Purchase.Cutting;

/// <summary>Which lengths the pieces from each one on can come to: a bit a length. It tells how much of what is left on a stock must stay there.</summary>
internal sealed class SuffixSums
{
    private const int Bits = 64;
    private const long MostWords = 2_000_000;

    private readonly ulong[] _reached;
    private readonly int _words;

    /// <summary>Follows the pieces, the last first.</summary>
    internal SuffixSums(ReadOnlySpan<int> lengths, int longest)
    {
        _words = (longest / Bits) + 1;
        Known = (long)_words * (lengths.Length + 1) <= MostWords;
        _reached = Known ? new ulong[_words * (lengths.Length + 1)] : [];
        if (Known)
        {
            _reached[lengths.Length * _words] = 1;
        }

        for (var p = lengths.Length - 1; Known && p >= 0; p--)
        {
            Add(_reached.AsSpan((p + 1) * _words, _words), _reached.AsSpan(p * _words, _words), lengths[p]);
        }
    }

    /// <summary>Whether the sums are followed: not where there would be too many.</summary>
    internal bool Known { get; }

    /// <summary>The greatest length up to a room that the pieces from one on can come to.</summary>
    internal long Most(int piece, long room)
    {
        var from = _reached.AsSpan(piece * _words, _words);
        var word = (int)(room / Bits);
        var bits = from[word] & (ulong.MaxValue >> (Bits - 1 - (int)(room % Bits)));
        while (bits == 0)
        {
            bits = from[--word];
        }

        return ((long)word * Bits) + BitOperations.Log2(bits);
    }

    private static void Add(ReadOnlySpan<ulong> from, Span<ulong> into, int length)
    {
        var (words, bits) = (length / Bits, length % Bits);
        from.CopyTo(into);
        for (var w = words; w < into.Length; w++)
        {
            into[w] |= from[w - words] << bits;
            if (bits > 0 && w > words)
            {
                into[w] |= from[w - words - 1] >> (Bits - bits);
            }
        }
    }
}
