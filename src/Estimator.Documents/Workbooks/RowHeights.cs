namespace Estimator.Documents.Workbooks;

/// <summary>Heights of rows from their text, so that no program has to fit them and no text is cut.</summary>
internal sealed class RowHeights
{
    private const double Tallest = 409;
    private const double LineOfPoint = 1.28;
    private const double Margin = 3;

    // A column's width counts figures of the normal size; a letter of running text is narrower on the average.
    private const double LettersOfWidth = 1.22;

    private readonly Dictionary<int, double> _heights = [];

    /// <summary>The rows and their heights, in points.</summary>
    internal IEnumerable<KeyValuePair<int, double>> All => _heights;

    /// <summary>A row must hold this text.</summary>
    internal void Need(int row, string text, double width, CellLook look)
    {
        var lines = look.Wraps ? Lines(text, (int)(width * LettersOfWidth * SheetStyles.FontSize / look.Points)) : 1;
        Need(row, lines, look);
    }

    /// <summary>A row must hold so many lines.</summary>
    internal void Need(int row, int lines, CellLook look)
    {
        var height = Math.Min(Tallest, Math.Round((lines * look.Points * LineOfPoint) + Margin, 1, MidpointRounding.AwayFromZero));
        if (height > _heights.GetValueOrDefault(row))
        {
            _heights[row] = height;
        }
    }

    private static int Lines(string text, int letters)
    {
        letters = Math.Max(1, letters);
        if (text.Length <= letters && !text.Contains('\n', StringComparison.Ordinal))
        {
            return 1;
        }

        var lines = 0;
        foreach (var paragraph in text.Split('\n'))
        {
            lines++;
            var used = 0;
            foreach (var word in paragraph.Split(' '))
            {
                if (used > 0 && used + 1 + word.Length > letters)
                {
                    lines++;
                    used = 0;
                }

                used += word.Length + (used > 0 ? 1 : 0);
                lines += Math.Max(0, used - 1) / letters;
                used = used > letters ? used % letters : used;
            }
        }

        return lines;
    }
}
