using System.Collections.Immutable;
using System.Globalization;

namespace Estimator.Web.Plans;

/// <summary>The letters and numbers at the edge of a sheet, by which a place is named.</summary>
/// <param name="Step">Side of a field, in feet.</param>
/// <param name="Columns">Fields across, lettered from the left.</param>
/// <param name="Rows">Fields down, numbered from the top.</param>
public sealed record SheetGrid(double Step, int Columns, int Rows)
{
    private const int MostFields = 12;
    private const int Letters = 26;

    // A rest that is narrower than this part of a field belongs to the last one.
    private const double NarrowRest = 0.4;

    private static readonly ImmutableArray<int> Steps = [6, 8, 10, 12, 16, 20, 25, 50];

    /// <summary>The grid of a frame: the finest round field that leaves the edge readable.</summary>
    public static SheetGrid Of(SheetFrame frame)
    {
        var longest = Math.Max(frame.Width, frame.Height);
        var step = Steps.Select(s => (double)s).FirstOrDefault(s => longest <= s * MostFields, Math.Ceiling(longest / MostFields));
        return new SheetGrid(step, Fields(frame.Width, step), Fields(frame.Height, step));
    }

    /// <summary>The letter of a column from 0.</summary>
    public static string Letter(int column) => column < Letters ? ((char)('A' + column)).ToString() : Letter(column / Letters - 1) + Letter(column % Letters);

    /// <summary>The field of a point; one outside belongs to the nearest.</summary>
    public string Zone(SheetPoint point) =>
        Letter(Math.Clamp((int)(point.X / Step), 0, Columns - 1)) + (Math.Clamp((int)(point.Y / Step), 0, Rows - 1) + 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>Where a field begins; past the last one, where the sheet ends.</summary>
    public double Edge(int field, int fields, double end) => field >= fields ? end : field * Step;

    private static int Fields(double feet, double step) => Math.Max(1, (int)Math.Ceiling(feet / step - NarrowRest));
}
