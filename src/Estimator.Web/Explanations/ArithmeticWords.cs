using Estimator.Engine.Explanations;
using Estimator.Web.Figures;

namespace Estimator.Web.Explanations;

/// <summary>Writes the arithmetic of a node as a person would: 55' 6" ÷ 8' 0" = 6.94.</summary>
public static class ArithmeticWords
{
    private const int MostWritten = 5;

    /// <summary>The sign that stands before an input of an operation.</summary>
    /// <param name="operation">The operation of the node above.</param>
    /// <param name="place">Which input, 0 for the first.</param>
    public static string Sign(Operation operation, int place) => operation switch
    {
        Operation.Sum => "+",
        Operation.Difference => place == 0 ? "" : "\u2212",
        Operation.Product => place == 0 ? "" : "\u00D7",
        Operation.Quotient => place == 0 ? "" : "\u00F7",
        Operation.PercentOf => place == 0 ? "" : "%",
        Operation.Because => place == 0 ? "=" : "",
        _ => "",
    };

    /// <summary>The arithmetic of a node in a line; empty for a leaf, or where the list is too long to read.</summary>
    public static string Line(ExplanationNode node, ExplanationBook book)
    {
        if (node.Inputs.IsEmpty)
        {
            return "";
        }

        if (node.Operation is Operation.Count)
        {
            return $"{American.Number(node.Inputs.Length)} counted";
        }

        if (node.Operation is Operation.DrawnPercentile or Operation.DrawnShare)
        {
            var (wanted, draws) = (Value(book[node.Inputs[0]]), Value(book[node.Inputs[1]]));
            return node.Operation is Operation.DrawnPercentile ? $"{wanted} of {draws} draws stay below" : $"of {draws} draws, those no more than {wanted} off";
        }

        if (node.Inputs.Length > MostWritten)
        {
            return node.Operation is Operation.Sum ? $"sum of {American.Number(node.Inputs.Length)}" : "";
        }

        var values = node.Inputs.Select(i => Value(book[i])).ToArray();
        return node.Operation switch
        {
            Operation.Sum when values.Length > 1 => string.Join(" + ", values),
            Operation.Difference when values.Length > 1 => string.Join(" \u2212 ", values),
            Operation.Product when values.Length > 1 => string.Join(" \u00D7 ", values),
            Operation.Quotient => $"{values[0]} \u00F7 {values[1]}",
            Operation.PercentOf => $"{values[1]} of {values[0]}",
            Operation.Minimum when values.Length > 1 => $"the least of {string.Join(", ", values)}",
            Operation.Maximum when values.Length > 1 => $"the greatest of {string.Join(", ", values)}",
            Operation.RoundUp => $"{values[0]}, rounded up to a multiple of {values[1]}",
            Operation.RoundDown => $"{values[0]}, rounded down to a multiple of {values[1]}",
            Operation.RoundNearest => $"{values[0]}, rounded to {values[1]}",
            Operation.InFeet => $"{values[0]} in feet",
            Operation.Apart => $"between {values[0]} and {values[1]}",
            Operation.SquareDistance => "square-cornered distance of two points",
            Operation.StraightDistance => "straight distance of two points",
            Operation.PartWay => "a point on the way between two",
            Operation.TrianglePercentile => $"{values[0]} of a triangle from {values[1]} over {values[2]} to {values[3]}",
            _ => "",
        };
    }

    private static string Value(ExplanationNode node) => FigureText.Of(node.Value, node.Unit, FigureForm.Full).ToString();
}
