using PdfSharp.Fonts;

namespace Estimator.Documents.Papers;

/// <summary>The fonts of all papers, which travel in the assembly: no machine's own font is ever looked for.</summary>
/// <remarks>Liberation Sans 2.1.5 under the SIL Open Font License; its text lies beside the files.</remarks>
internal sealed class PaperFonts : IFontResolver
{
    /// <summary>Name of the family.</summary>
    internal const string Family = "LiberationSans";

    private const string Regular = "LiberationSans-Regular";
    private const string Bold = "LiberationSans-Bold";

    private static readonly Lazy<bool> Known = new(() =>
    {
        GlobalFontSettings.FontResolver = new PaperFonts();
        return true;
    });

    /// <summary>Makes the fonts known to the library, once for the program.</summary>
    internal static bool Use() => Known.Value;

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) => familyName == Family ? new FontResolverInfo(isBold ? Bold : Regular) : null;

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName)
    {
        using var stream = typeof(PaperFonts).Assembly.GetManifestResourceStream($"fonts/{faceName}.ttf") ?? throw new InvalidOperationException($"The assembly has no font {faceName}.");
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
