using Estimator.Engine.Explanations;

namespace Estimator.Documents.Explanations;

/// <summary>Every node behind a document's figures, each once, in the order of a tree opened from the top, with its row on the last sheet.</summary>
internal sealed class ExplanationIndex
{
    /// <summary>The row of the first node.</summary>
    internal const int FirstRow = 5;

    private readonly Dictionary<NodeRef, int> _rows = [];
    private readonly List<(ExplanationNode Node, int Depth)> _nodes = [];

    internal ExplanationIndex(ExplanationBook book, IEnumerable<NodeRef> figures)
    {
        var open = new Stack<(NodeRef Node, int Depth)>();
        foreach (var figure in figures)
        {
            open.Push((figure, 0));
            while (open.TryPop(out var next))
            {
                if (!_rows.TryAdd(next.Node, FirstRow + _nodes.Count))
                {
                    continue;
                }

                var node = book[next.Node];
                _nodes.Add((node, next.Depth));
                for (var i = node.Inputs.Length - 1; i >= 0; i--)
                {
                    open.Push((node.Inputs[i], next.Depth + 1));
                }
            }
        }
    }

    /// <summary>The nodes and how deep they lie.</summary>
    internal IReadOnlyList<(ExplanationNode Node, int Depth)> Nodes => _nodes;

    /// <summary>The row of a node.</summary>
    internal int this[NodeRef node] => _rows[node];
}
