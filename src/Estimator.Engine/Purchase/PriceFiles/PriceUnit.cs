using System.Globalization;
using System.Text.RegularExpressions;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Purchase.PriceFiles;

/// <summary>What a price is for.</summary>
/// <param name="Units">Pieces or feet that the price buys.</param>
/// <param name="IsPack">Whether that is the pack that is sold, as a coil or a box is; each, hundred, thousand and foot only say how the price is written.</param>
/// <remarks>C stands for a hundred and M for a thousand, as Roman numerals; the trade prices wire and fittings so. Common practice, no source.</remarks>
public sealed partial record PriceUnit(int Units, bool IsPack)
{
    private const int Hundred = 100;
    private const int Thousand = 1000;
    private const int Longest = 60;

    /// <summary>One piece or one foot.</summary>
    public static PriceUnit Each { get; } = new(1, false);

    /// <summary>Reads <c>EA</c>, <c>C</c>, <c>per 1000 ft</c>, <c>coil of 250 ft</c>, <c>BX/100</c>; nothing is each.</summary>
    public static Parsed<PriceUnit> Read(string? text)
    {
        if (text?.Length > Longest)
        {
            return Failure(text);
        }

        var words = Symbols().Replace((text ?? "").Trim().ToLowerInvariant(), " ").Trim();
        var match = Form().Match(words);
        if (words.Length == 0)
        {
            return Parsed<PriceUnit>.Success(Each);
        }

        if (!match.Success)
        {
            return Failure(text);
        }

        var (word, hasCount) = (match.Groups["word"].Value, match.Groups["count"].Success || match.Groups["first"].Success);
        var digits = match.Groups["count"].Success ? match.Groups["count"].Value : match.Groups["first"].Value;
        var count = 1;
        if (hasCount && (!int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out count) || count is < 1 or > Catalogue.Offer.LargestPack))
        {
            return Failure(text);
        }

        return (word, hasCount) switch
        {
            ("ea" or "each" or "e" or "pc" or "pcs" or "piece" or "pieces" or "unit" or "ft" or "foot" or "feet" or "lf", _) => Parsed<PriceUnit>.Success(new PriceUnit(count, false)),
            ("c" or "cft" or "hundred", false) => Parsed<PriceUnit>.Success(new PriceUnit(Hundred, false)),
            ("m" or "mft" or "thousand", false) => Parsed<PriceUnit>.Success(new PriceUnit(Thousand, false)),
            ("", true) => Parsed<PriceUnit>.Success(new PriceUnit(count, false)),
            ("coil" or "reel" or "rl" or "roll" or "spool" or "sp" or "cl" or "box" or "bx" or "pack" or "pk" or "pkg" or "package" or "carton" or "ctn" or "case" or "cs" or "bag" or "bg" or "bundle" or "bd", true) =>
                Parsed<PriceUnit>.Success(new PriceUnit(count, true)),
            _ => Failure(text),
        };
    }

    private static Parsed<PriceUnit> Failure(string? text) => Parsed<PriceUnit>.Failure(
        $"Found '{PriceCell.Short(text)}'; each, C (hundred), M (thousand), foot, or a pack with its count such as 'coil of 250 ft' or 'box of 100' is accepted.");

#pragma warning disable MA0009 // What is read has at most sixty characters, and a time limit would let a busy machine refuse a good unit.
    [GeneratedRegex("[^a-z0-9]+|(?<=[0-9])(?=[a-z])|(?<=[a-z])(?=[0-9])", RegexOptions.CultureInvariant)]
    private static partial Regex Symbols();

    [GeneratedRegex("^(?:(?:per|by|of) )?(?:(?<first>[0-9]{1,9})(?: ft| feet| foot| pcs| pc| ea)?(?: |$))?(?<word>[a-z]*)(?: of)?(?: (?<count>[0-9]{1,9}))?(?: ft| feet| foot| pcs| pc| ea| pieces)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Form();
#pragma warning restore MA0009
}
