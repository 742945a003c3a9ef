using System.Text;
using PdfSharp.Drawing;
using PdfSharp.Fonts;

namespace Estimator.Documents.Papers;

/// <summary>Measures and wraps text in the fonts of a paper.</summary>
internal sealed class PaperPen
{
    private const char Missing = '?';
    private const int LettersOfALine = 400;

    private readonly XGraphics _ruler;
    private readonly Dictionary<(double Points, bool Bold), XFont> _fonts = [];
    private readonly Dictionary<(string Word, bool Bold), double> _widths = [];

    internal PaperPen()
    {
        PaperFonts.Use();
        _ruler = XGraphics.CreateMeasureContext(new XSize(1000, 1000), XGraphicsUnit.Point, XPageDirection.Downwards);
    }

    internal XFont Font(PaperLook look)
    {
        if (!_fonts.TryGetValue((look.Points, look.Bold), out var font))
        {
            font = new XFont(PaperFonts.Family, look.Points, look.Bold ? XFontStyleEx.Bold : XFontStyleEx.Regular);
            _fonts.Add((look.Points, look.Bold), font);
        }

        return font;
    }

    /// <summary>How wide a text is, points.</summary>
    internal double Width(string text, PaperLook look)
    {
        if (!_widths.TryGetValue((text, look.Bold), out var width))
        {
            // Widths grow with the size, so each word is measured once.
            width = _ruler.MeasureString(text, Font(look)).Width / look.Points;
            _widths.Add((text, look.Bold), width);
        }

        return width * look.Points;
    }

    /// <summary>The lines of a text in a column; a word that is wider than the column is cut.</summary>
    internal List<string> Wrap(string text, PaperLook look, double width)
    {
        var lines = new List<string>();
        foreach (var paragraph in Clean(text, look).Split('\n'))
        {
            var line = new StringBuilder();
            var used = 0.0;
            foreach (var word in paragraph.Split(' ').SelectMany(w => Cut(w, look, width)))
            {
                // Letters are set without kerning, so widths add up.
                var (wide, space) = (Width(word, look), Width(" ", look));
                if (line.Length > 0 && used + space + wide > width)
                {
                    lines.Add(line.ToString());
                    line.Clear();
                    used = 0;
                }

                used += line.Length > 0 ? space + wide : wide;
                line.Append(line.Length > 0 ? " " : "").Append(word);
            }

            lines.Add(line.ToString());
        }

        return lines;
    }

    /// <summary>The first lines of a text; the last ends with a sign where there are more.</summary>
    internal List<string> Wrap(string text, PaperLook look, double width, int most)
    {
        // A line holds a few hundred letters: what lies far beyond is not measured.
        var lines = Wrap(text.Length > most * LettersOfALine ? text[..(most * LettersOfALine)] : text, look, width);
        return lines.Count <= most ? lines : [.. lines.Take(most - 1), OneLine($"{lines[most - 1]} {lines[most]}", look, width)];
    }

    /// <summary>A text on one line, ended by a sign where it is too wide.</summary>
    internal string OneLine(string text, PaperLook look, double width)
    {
        var clean = Clean(text.Length > LettersOfALine ? text[..LettersOfALine] : text, look).Replace('\n', ' ');
        if (Width(clean, look) <= width)
        {
            return clean;
        }

        while (clean.Length > 0 && Width($"{clean}…", look) > width)
        {
            clean = clean[..^(char.IsLowSurrogate(clean[^1]) ? 2 : 1)];
        }

        return $"{clean}…";
    }

    // What the font can't draw would be an empty box that no search finds.
    private string Clean(string text, PaperLook look)
    {
        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.ReplaceLineEndings("\n").EnumerateRunes())
        {
            clean.Append(rune.Value switch
            {
                '\n' => "\n",
                '\t' => " ",
                < ' ' or 0x7F => Missing.ToString(),
                < 0x7F => rune.ToString(),
                _ => GlyphHelper.GlyphIndexFromCodePoint(rune.Value, Font(look)) == 0 ? Missing.ToString() : rune.ToString(),
            });
        }

        return clean.ToString();
    }

    private IEnumerable<string> Cut(string word, PaperLook look, double width)
    {
        while (word.Length > 1 && Width(word, look) > width)
        {
            var letters = word.Length - 1;
            while (letters > 1 && (Width(word[..letters], look) > width || char.IsHighSurrogate(word[letters - 1])))
            {
                letters--;
            }

            yield return word[..letters];
            word = word[letters..];
        }

        yield return word;
    }
}
