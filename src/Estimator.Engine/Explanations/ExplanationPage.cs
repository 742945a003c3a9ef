using System.Collections.Immutable;

namespace Estimator.Engine.Explanations;

/// <summary>The nodes that one group of the computation made, in flat arrays: no object a node, and inputs as spans of one array.</summary>
/// <remarks>
/// An input at or above zero is an index on this page; below zero it is the complement of an index into <see cref="Imports"/>,
/// the nodes of other pages. So a page that is remembered for an unchanged group needs only its imports bound again.
/// </remarks>
public sealed class ExplanationPage
{
    private readonly ImmutableArray<Operation> _operations;
    private readonly ImmutableArray<string> _rules;
    private readonly ImmutableArray<string> _labels;
    private readonly ImmutableArray<decimal> _values;
    private readonly ImmutableArray<Unit> _units;
    private readonly ImmutableArray<int> _inputEnds;
    private readonly ImmutableArray<int> _inputs;

    internal ExplanationPage(
        int number,
        ImmutableArray<Operation> operations,
        ImmutableArray<string> rules,
        ImmutableArray<string> labels,
        ImmutableArray<decimal> values,
        ImmutableArray<Unit> units,
        ImmutableArray<int> inputEnds,
        ImmutableArray<int> inputs,
        ImmutableArray<NodeRef> imports)
    {
        Number = number;
        (_operations, _rules, _labels, _values, _units, _inputEnds, _inputs) = (operations, rules, labels, values, units, inputEnds, inputs);
        Imports = imports;
    }

    /// <summary>Its number in the book.</summary>
    public int Number { get; }

    /// <summary>How many nodes it holds.</summary>
    public int Count => _operations.Length;

    /// <summary>Nodes of other pages that this page's nodes read.</summary>
    public ImmutableArray<NodeRef> Imports { get; }

    /// <summary>The node at an index.</summary>
    public ExplanationNode this[int index]
    {
        get
        {
            var start = index == 0 ? 0 : _inputEnds[index - 1];
            var inputs = _inputs.AsSpan()[start.._inputEnds[index]];
            var refs = ImmutableArray.CreateBuilder<NodeRef>(inputs.Length);
            foreach (var input in inputs)
            {
                refs.Add(input >= 0 ? new NodeRef(Number, input) : Imports[~input]);
            }

            return new ExplanationNode(
                new NodeRef(Number, index), _operations[index], _rules[index], _labels[index], _values[index], _units[index], refs.MoveToImmutable());
        }
    }

    /// <summary>The same page under another number, its imports following, so that the books of several jobs can stand in one.</summary>
    /// <param name="number">The new number of a page, from its old one.</param>
    public ExplanationPage Renumbered(Func<int, int> number) => new(
        number(Number), _operations, _rules, _labels, _values, _units, _inputEnds, _inputs, [.. Imports.Select(n => n with { Page = number(n.Page) })]);
}
