using System.Globalization;
using Estimator.Engine.Explanations;

namespace Estimator.Documents.Workbooks;

/// <summary>Turns the way in which the engine found a figure into a formula over the cells that hold its inputs, so that a sheet has no arithmetic of its own.</summary>
/// <remarks>A node without a cell is written out as long as it lies on the page of the figure; beyond that page its value stands.</remarks>
internal sealed class LiveFormula(ExplanationBook book)
{
    private const int Atom = 3;
    private const int Times = 2;
    private const int Plus = 1;

    private readonly Dictionary<NodeRef, CellAt> _cells = [];
    private readonly Dictionary<NodeRef, string> _names = [];

    /// <summary>The figure stands in a cell.</summary>
    internal void Holds(NodeRef node, CellAt cell) => _cells[node] = cell;

    /// <summary>The figure stands in a cell that has a name.</summary>
    internal void Holds(NodeRef node, string name) => _names[node] = name;

    /// <summary>The formula of a figure.</summary>
    /// <param name="node">The figure.</param>
    /// <param name="sheet">The sheet that the formula stands on.</param>
    /// <param name="here">Cells that stand for nodes in this formula alone.</param>
    internal string Of(NodeRef node, string sheet, Func<ExplanationNode, string?>? here = null) => Written(book[node], sheet, node.Page, here ?? (_ => null)).Text;

    private (string Text, int Rank) Reference(NodeRef at, string sheet, int page, Func<ExplanationNode, string?> here)
    {
        var node = book[at];
        return here(node) is { } own ? (own, Atom)
            : _names.TryGetValue(at, out var name) ? (name, Atom)
            : _cells.TryGetValue(at, out var cell) ? (cell.From(sheet), Atom)
            : at.Page == page ? Written(node, sheet, page, here)
            : Number(node.Value);
    }

    private (string Text, int Rank) Written(ExplanationNode node, string sheet, int page, Func<ExplanationNode, string?> here)
    {
        if (node.Operation is Operation.Sum && Block(node) is { } block)
        {
            return ($"SUM({block.First.From(sheet)}:{block.Last.From(block.Last.Sheet)})", Atom);
        }

        var inputs = node.Inputs.Select(i => Reference(i, sheet, page, here)).ToArray();
        return node.Operation switch
        {
            Operation.Sum => inputs.Length == 0 ? ("0", Atom) : Joined(inputs, "+", Plus),
            Operation.Difference => (string.Join('-', inputs.Select((x, i) => Within(x, i == 0 ? Plus : Times))), Plus),
            Operation.Product => Joined(inputs, "*", Times),
            Operation.Quotient => ($"{Within(inputs[0], Times)}/{Within(inputs[1], Atom)}", Times),
            Operation.PercentOf => ($"{Within(inputs[0], Times)}*{Within(inputs[1], Atom)}/100", Times),
            Operation.Because => inputs[0],
            Operation.RoundDown => ($"INT({Within(inputs[0], Times)}/{Within(inputs[1], Atom)})*{Within(inputs[1], Atom)}", Times),
            Operation.RoundUp => ($"-INT(-{Within(inputs[0], Times)}/{Within(inputs[1], Atom)})*{Within(inputs[1], Atom)}", Times),
            Operation.Minimum => ($"MIN({string.Join(',', inputs.Select(i => i.Text))})", Atom),
            Operation.Maximum => ($"MAX({string.Join(',', inputs.Select(i => i.Text))})", Atom),
            Operation.RoundNearest => ($"ROUND({inputs[0].Text},{Places(book[node.Inputs[1]].Value)})", Atom),
            _ => Number(node.Value),
        };
    }

    private (CellAt First, CellAt Last)? Block(ExplanationNode sum)
    {
        if (sum.Inputs.Length < 2 || !sum.Inputs.All(_cells.ContainsKey))
        {
            return null;
        }

        var cells = sum.Inputs.Select(i => _cells[i]).ToArray();
        return cells.Select((c, i) => c == cells[0] with { Row = cells[0].Row + i }).All(next => next) ? (cells[0], cells[^1]) : null;
    }

    private static (string Text, int Rank) Joined((string Text, int Rank)[] inputs, string sign, int rank) =>
        inputs.Length == 1 ? inputs[0] : (string.Join(sign, inputs.Select(x => Within(x, rank))), rank);

    private static string Within((string Text, int Rank) part, int rank) => part.Rank >= rank ? part.Text : $"({part.Text})";

    private static (string Text, int Rank) Number(decimal value) => (value.ToString("0.############", CultureInfo.InvariantCulture), value < 0 ? Plus : Atom);

    private static int Places(decimal step) => step switch
    {
        1m => 0,
        0.1m => 1,
        0.01m => 2,
        0.001m => 3,
        0.0001m => 4,
        _ => throw new ArgumentOutOfRangeException(nameof(step), step, "A sheet rounds to a power of ten."),
    };
}
