using System.Globalization;
using ClosedXML.Excel;

namespace Estimator.Documents.Workbooks;

/// <summary>Where a cell stands.</summary>
/// <param name="Sheet">Name of the sheet.</param>
/// <param name="Row">Row, from 1.</param>
/// <param name="Column">Column, from 1.</param>
internal readonly record struct CellAt(string Sheet, int Row, int Column)
{
    /// <summary>The address in a formula of a sheet.</summary>
    internal string From(string sheet) => sheet == Sheet ? Address : $"{Sheet}!{Address}";

    private string Address => string.Create(CultureInfo.InvariantCulture, $"{XLHelper.GetColumnLetterFromNumber(Column)}{Row}");
}
