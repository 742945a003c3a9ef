using System.Globalization;
using System.Text;
using Estimator.Engine.Explanations;
using Estimator.Engine.Measures;

namespace Estimator.Cli.Takeoffs;

/// <summary>Prints an explanation as an indented tree. A node that was opened already is named and not opened again.</summary>
internal static class ExplanationText
{
    private const int MostLines = 4000;

    internal static string Render(ExplanationBook book, NodeRef node, int depth)
    {
        var text = new StringBuilder();
        var lines = 0;
        Append(book, node, 0, depth, [], text, ref lines);
        return text.ToString();
    }

    private static void Append(ExplanationBook book, NodeRef at, int level, int depth, HashSet<NodeRef> seen, StringBuilder text, ref int lines)
    {
        if (++lines > MostLines)
        {
            return;
        }

        var node = book[at];
        var again = !node.Inputs.IsEmpty && !seen.Add(at);
        text.Append(' ', 2 * level).Append(node.Label).Append(" = ").Append(Value(node)).Append("  <").Append(Words(node)).Append('>').AppendLine(again ? " (above)" : "");
        if (again || level >= depth)
        {
            return;
        }

        foreach (var input in node.Inputs)
        {
            Append(book, input, level + 1, depth, seen, text, ref lines);
        }
    }

    private static string Words(ExplanationNode node) => node.Operation switch
    {
        Operation.Given => $"stated at {node.Rule}",
        Operation.Row => RowSources.Of(node.Rule),
        Operation.Constant => "counted",
        _ => $"{node.Operation}: {node.Rule}",
    };

    private static string Value(ExplanationNode node) => node.Unit switch
    {
        Unit.Length => Length.FromNanometres(decimal.ToInt64(decimal.Round(node.Value, 0, MidpointRounding.AwayFromZero))).ToString(),
        Unit.Dollars => string.Create(CultureInfo.InvariantCulture, $"${node.Value:0.00##}"),
        Unit.Percent => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.####}%"),
        Unit.Each or Unit.Factor => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.######}"),
        Unit.Feet => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.###} ft"),
        Unit.SquareFeet => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.##} sq ft"),
        Unit.CubicInches => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.###} cu in"),
        Unit.Hours => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.####} h"),
        Unit.Amperes => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.###} A"),
        Unit.VoltAmperes => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.##} VA"),
        Unit.Volts => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.####} V"),
        Unit.Ohms => string.Create(CultureInfo.InvariantCulture, $"{node.Value:0.######} ohm"),
        _ => node.Value.ToString(CultureInfo.InvariantCulture),
    };
}
