using PdfSharp.Drawing;

namespace Estimator.Documents.Papers;

/// <summary>How text stands on a paper: ink and hairlines, copper only where the reader has to act, red only for warnings.</summary>
/// <param name="Points">Size.</param>
/// <param name="Bold">Whether it is bold.</param>
/// <param name="Ink">Its ink.</param>
internal sealed record PaperLook(double Points, bool Bold, XColor Ink)
{
    internal static readonly XColor Dark = XColor.FromArgb(0x21, 0x1C, 0x16);
    internal static readonly XColor SoftInk = XColor.FromArgb(0x5A, 0x51, 0x46);
    internal static readonly XColor Hairline = XColor.FromArgb(0xD8, 0xCD, 0xB9);
    internal static readonly XColor Sunk = XColor.FromArgb(0xF4, 0xEE, 0xE3);
    internal static readonly XColor Copper = XColor.FromArgb(0x91, 0x46, 0x1A);
    internal static readonly XColor Red = XColor.FromArgb(0xA7, 0x1B, 0x39);

    private const double LineOfPoint = 1.3;
    private const double AscentOfPoint = 0.98;

    /// <summary>What the paper is.</summary>
    internal static PaperLook Title { get; } = new(20, true, Dark);

    /// <summary>Who sends it.</summary>
    internal static PaperLook Company { get; } = new(12, true, Dark);

    /// <summary>Head of a section.</summary>
    internal static PaperLook Section { get; } = new(12, true, Dark);

    /// <summary>Head of a part within a section.</summary>
    internal static PaperLook Part { get; } = new(9.5, true, Dark);

    /// <summary>Running text and cells.</summary>
    internal static PaperLook Body { get; } = new(9.5, false, Dark);

    /// <summary>Running text that stands out.</summary>
    internal static PaperLook Strong { get; } = new(9.5, true, Dark);

    /// <summary>What explains.</summary>
    internal static PaperLook Soft { get; } = new(9, false, SoftInk);

    /// <summary>Cells of a row.</summary>
    internal static PaperLook Cell { get; } = new(9, false, Dark);

    /// <summary>Bands and totals.</summary>
    internal static PaperLook CellStrong { get; } = new(9, true, Dark);

    /// <summary>Heads of columns.</summary>
    internal static PaperLook Head { get; } = new(8, true, SoftInk);

    /// <summary>Feet, cautions, small print.</summary>
    internal static PaperLook Small { get; } = new(8, false, SoftInk);

    /// <summary>The one figure that a reader looks for.</summary>
    internal static PaperLook Figure { get; } = new(22, true, Dark);

    /// <summary>What must not be overlooked.</summary>
    internal static PaperLook Warning { get; } = new(9.5, true, Red);

    /// <summary>From the foot of one line to that of the next, points.</summary>
    internal double Line => Points * LineOfPoint;

    /// <summary>From the top of a line to where its letters stand, points.</summary>
    internal double Ascent => Points * AscentOfPoint;
}
