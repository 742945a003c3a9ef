using System.Runtime.InteropServices;
using Estimator.Engine.Measures;

namespace Estimator.Engine.Explanations;

/// <summary>Writes the nodes of one group while it computes. Values are computed here from the inputs, so a node always agrees with its rule.</summary>
/// <param name="page">Number of the page in the book.</param>
public sealed class PageWriter(int page)
{
    private readonly List<Operation> _operations = [];
    private readonly List<string> _rules = [];
    private readonly List<string> _labels = [];
    private readonly List<decimal> _values = [];
    private readonly List<Unit> _units = [];
    private readonly List<int> _inputEnds = [];
    private readonly List<int> _inputs = [];
    private readonly List<NodeRef> _imports = [];
    private readonly Dictionary<NodeRef, int> _importIndex = [];
    private readonly Dictionary<(Operation Operation, string Rule, string Label, decimal Value), Fact> _leaves = [];

    /// <summary>The page's number.</summary>
    public int Page { get; } = page;

    /// <summary>A leaf that the user entered.</summary>
    /// <param name="path">Its place in the job file, such as <c>$.levels[0].rooms[2].size</c>.</param>
    /// <param name="label">What it is.</param>
    /// <param name="value">The value in <paramref name="unit"/>.</param>
    /// <param name="unit">The unit.</param>
    public Fact Given(string path, string label, decimal value, Unit unit) => Leaf(Operation.Given, path, label, value, unit);

    /// <summary>A leaf that the user entered: a length.</summary>
    /// <param name="path">Its place in the job file.</param>
    /// <param name="label">What it is.</param>
    /// <param name="value">The length.</param>
    public Fact Given(string path, string label, Length value) => Given(path, label, value.ToNanometres(), Unit.Length);

    /// <summary>A leaf read from a rule table or the catalogue.</summary>
    /// <param name="table">Id of the table.</param>
    /// <param name="key">Stable key of the row.</param>
    /// <param name="label">What it is.</param>
    /// <param name="value">The value in <paramref name="unit"/>.</param>
    /// <param name="unit">The unit.</param>
    public Fact Row(string table, string key, string label, decimal value, Unit unit) => Leaf(Operation.Row, $"{table}:{key}", label, value, unit);

    /// <summary>A leaf read from a rule table: a length.</summary>
    /// <param name="table">Id of the table.</param>
    /// <param name="key">Stable key of the row.</param>
    /// <param name="label">What it is.</param>
    /// <param name="value">The length.</param>
    public Fact Row(string table, string key, string label, Length value) => Row(table, key, label, value.ToNanometres(), Unit.Length);

    /// <summary>A whole number that a rule counts with.</summary>
    /// <param name="label">What it counts.</param>
    /// <param name="value">The number.</param>
    /// <param name="unit">Its unit.</param>
    public Fact Constant(string label, int value, Unit unit = Unit.Factor) => Leaf(Operation.Constant, "constant", label, value, unit);

    /// <summary>A value that follows from others.</summary>
    /// <param name="operation">How it follows.</param>
    /// <param name="rule">Stable id of the rule.</param>
    /// <param name="label">What it is.</param>
    /// <param name="unit">The unit of the result.</param>
    /// <param name="inputs">What it follows from.</param>
    /// <exception cref="ArgumentException">The operation is a leaf or has too few inputs.</exception>
    public Fact Compute(Operation operation, string rule, string label, Unit unit, params ReadOnlySpan<Fact> inputs)
    {
        var value = Arithmetic.Apply(operation, inputs);
        foreach (var input in inputs)
        {
            _inputs.Add(Local(input.Node));
        }

        return Append(operation, rule, label, value, unit);
    }

    /// <summary>The sum of facts of one unit.</summary>
    /// <param name="rule">Stable id of the rule.</param>
    /// <param name="label">What it is.</param>
    /// <param name="unit">Their unit.</param>
    /// <param name="inputs">The addends; none gives zero.</param>
    public Fact Sum(string rule, string label, Unit unit, IReadOnlyList<Fact> inputs) =>
        Compute(Operation.Sum, rule, label, unit, [.. inputs]);

    /// <summary>The finished page.</summary>
    public ExplanationPage ToPage() => new(
        Page, [.. _operations], [.. _rules], [.. _labels], [.. _values], [.. _units], [.. _inputEnds], [.. _inputs], [.. _imports]);

    private Fact Leaf(Operation operation, string rule, string label, decimal value, Unit unit)
    {
        ref var known = ref CollectionsMarshal.GetValueRefOrAddDefault(_leaves, (operation, rule, label, value), out var exists);
        if (!exists)
        {
            known = Append(operation, rule, label, value, unit);
        }

        return known;
    }

    private Fact Append(Operation operation, string rule, string label, decimal value, Unit unit)
    {
        _operations.Add(operation);
        _rules.Add(rule);
        _labels.Add(label);
        _values.Add(value);
        _units.Add(unit);
        _inputEnds.Add(_inputs.Count);
        return new Fact(value, unit, new NodeRef(Page, _operations.Count - 1));
    }

    private int Local(NodeRef node)
    {
        if (node.Page == Page)
        {
            return node.Index;
        }

        if (!_importIndex.TryGetValue(node, out var index))
        {
            index = _imports.Count;
            _imports.Add(node);
            _importIndex.Add(node, index);
        }

        return ~index;
    }
}
