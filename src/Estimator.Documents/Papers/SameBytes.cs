using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using PdfSharp.Pdf;

namespace Estimator.Documents.Papers;

/// <summary>Makes the same paper the same bytes: what the library draws by lot or takes from the clock follows from the content.</summary>
internal static partial class SameBytes
{
    // A file wants a date; one that was never issued has none of its own.
    private static readonly DateOnly Never = new(2000, 1, 1);

    /// <summary>Saves the document.</summary>
    /// <param name="document">The document.</param>
    /// <param name="issued">The day that is printed on it.</param>
    internal static byte[] Save(PdfDocument document, DateOnly? issued)
    {
        var day = (issued ?? Never).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        (document.Info.CreationDate, document.Info.ModificationDate) = (day, day);
        using var stream = new MemoryStream();
        document.Save(stream, closeStream: false);
        // Latin-1 keeps each byte, and each replacement is as long as what it replaces, so no offset moves.
        var text = Encoding.Latin1.GetString(stream.GetBuffer(), 0, (int)stream.Length);
        var subsets = new Dictionary<string, string>(StringComparer.Ordinal);
        text = SubsetTags().Replace(text, m => Subset(subsets, m.Value));
        text = MetadataIds().Replace(text, "00000000-0000-0000-0000-000000000000");
        text = Ids().Replace(text, m => Digits().Replace(m.Value, d => new string('0', d.Length)));
        var hash = Convert.ToHexString(SHA256.HashData(Encoding.Latin1.GetBytes(text)));
        return Encoding.Latin1.GetBytes(Ids().Replace(text, m => Digits().Replace(m.Value, d => hash[..d.Length])));
    }

    private static string Subset(Dictionary<string, string> known, string tag)
    {
        if (!known.TryGetValue(tag, out var name))
        {
            name = string.Create(CultureInfo.InvariantCulture, $"PAPER{(char)('A' + known.Count)}");
            known.Add(tag, name);
        }

        return name;
    }

    [GeneratedRegex(@"(?<=/)[A-Z]{6}(?=\+Liberation)", RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex SubsetTags();

    [GeneratedRegex("(?<=uuid:)[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex MetadataIds();

    [GeneratedRegex(@"/ID\[<[0-9A-Fa-f]{32}><[0-9A-Fa-f]{32}>\]", RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex Ids();

    [GeneratedRegex("[0-9A-Fa-f]{32}", RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex Digits();
}
