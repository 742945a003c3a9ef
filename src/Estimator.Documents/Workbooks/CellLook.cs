using ClosedXML.Excel;

namespace Estimator.Documents.Workbooks;

/// <summary>A named style, with what the height of a row follows from.</summary>
/// <param name="Style">The style.</param>
/// <param name="Points">Size of its type.</param>
/// <param name="Wraps">Whether long text goes on in a further line.</param>
internal sealed record CellLook(IXLStyle Style, double Points, bool Wraps);
