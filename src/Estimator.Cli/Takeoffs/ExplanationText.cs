using System.Text;
using Estimator.Documents.Explanations;
using Estimator.Engine.Explanations;

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
        text.Append(' ', 2 * level).Append(node.Label).Append(" = ").Append(FigureText.Of(node)).Append("  <").Append(Words(node)).Append('>').AppendLine(again ? " (above)" : "");
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
}
