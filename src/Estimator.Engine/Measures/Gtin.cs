namespace Estimator.Engine.Measures;

/// <summary>A global trade item number, in the form of fourteen digits. <c>default</c> is no number.</summary>
/// <remarks>
/// Source: GS1 General Specifications, "Check digit calculations": from the right, digits before the check digit count three times and once by turns, and the check digit fills
/// the sum up to a multiple of ten; shorter numbers are filled with zeros on the left.
/// </remarks>
public readonly record struct Gtin
{
    private const int Digits = 14;
    private const int Ten = 10;
    private const int OddWeight = 3;

    private readonly string? _digits;

    private Gtin(string digits) => _digits = digits;

    /// <summary>Reads a number of 8, 12, 13 or 14 digits; spaces and hyphens between them are passed over.</summary>
    /// <param name="text">What stands in a file or was typed.</param>
    public static Parsed<Gtin> Read(string? text)
    {
        const string Accepted = "a GTIN of 8, 12, 13 or 14 digits with its check digit is accepted";
        var typed = (text ?? "").Trim();
        var digits = string.Concat(typed.Where(c => c is not (' ' or '-')));
        if (digits.Length is not (8 or 12 or 13 or Digits) || !digits.All(char.IsAsciiDigit))
        {
            return Parsed<Gtin>.Failure($"Found '{Short(typed)}'; {Accepted}.");
        }

        var padded = digits.PadLeft(Digits, '0');
        var check = CheckDigit(padded.AsSpan(0, Digits - 1));
        return check == padded[^1]
            ? Parsed<Gtin>.Success(new Gtin(padded))
            : Parsed<Gtin>.Failure($"Found '{Short(typed)}', whose last digit would have to be {check}; {Accepted}.");
    }

    /// <summary>The fourteen digits.</summary>
    public override string ToString() => _digits ?? "";

    private static char CheckDigit(ReadOnlySpan<char> digits)
    {
        var sum = 0;
        for (var i = 0; i < digits.Length; i++)
        {
            sum += (digits[^(i + 1)] - '0') * (i % 2 == 0 ? OddWeight : 1);
        }

        return (char)('0' + ((Ten - (sum % Ten)) % Ten));
    }

    private static string Short(string text) => text.Length <= 40 ? text : text[..40];
}
