using System.Globalization;
using System.Text;

namespace Estimator.Web.Plans;

/// <summary>Writes points as the path language of SVG, to the thousandth of a foot.</summary>
public static class PathText
{
    /// <summary>A number of a drawing.</summary>
    public static string Of(double feet) => Math.Round(feet, 3, MidpointRounding.AwayFromZero).ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>An open line.</summary>
    public static string Line(IEnumerable<SheetPoint> points)
    {
        var text = new StringBuilder();
        foreach (var point in points)
        {
            text.Append(text.Length == 0 ? 'M' : 'L').Append(Of(point.X)).Append(' ').Append(Of(point.Y));
        }

        return text.ToString();
    }

    /// <summary>A closed outline.</summary>
    public static string Ring(IEnumerable<SheetPoint> points) => Line(points) + "Z";
}
