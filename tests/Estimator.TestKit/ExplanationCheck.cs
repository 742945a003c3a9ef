using Estimator.Engine.Explanations;

namespace Estimator.TestKit;

/// <summary>Works every node of a book out again from its inputs, by arithmetic of its own, and follows every leaf.</summary>
public static class ExplanationCheck
{
    private static readonly decimal Sixteenth = 25_400_000m / 16;

    /// <summary>The nodes whose value does not follow from their inputs.</summary>
    public static IEnumerable<string> Problems(ExplanationBook book)
    {
        foreach (var node in book.Pages.SelectMany(p => Enumerable.Range(0, p.Count).Select(i => p[i])))
        {
            var inputs = node.Inputs.Select(i => book[i].Value).ToArray();
            if (node.Operation is Operation.Given or Operation.Row or Operation.Constant)
            {
                if (inputs.Length > 0 || node.Rule.Length == 0)
                {
                    yield return $"{node.Label}: a leaf with inputs or without a place";
                }
            }
            else if (Again(node.Operation, inputs) is var again && Math.Abs(again - node.Value) > Tolerance(node.Operation))
            {
                yield return $"{node.Label} ({node.Rule}): {node.Operation} gives {again}, the node says {node.Value}";
            }
        }
    }

    // Draws are made again with roots in floating point, so they agree to the last places only; whole draws lie a four-thousandth apart.
    private static decimal Tolerance(Operation operation) => operation switch
    {
        Operation.TrianglePercentile or Operation.DrawnPercentile => 0.001m,
        Operation.DrawnShare => 0.1m,
        _ => 0,
    };

    private static decimal Again(Operation operation, decimal[] x) => operation switch
    {
        Operation.Sum => x.Sum(),
        Operation.Difference => x[0] - x.Skip(1).Sum(),
        Operation.Product => x.Aggregate(1m, (a, b) => a * b),
        Operation.Quotient => x[0] / x[1],
        Operation.PercentOf => x[0] * x[1] / 100m,
        Operation.Minimum => x.Min(),
        Operation.Maximum => x.Max(),
        Operation.Count => x.Length,
        Operation.Because => x[0],
        Operation.RoundUp => Math.Ceiling(x[0] / x[1]) * x[1],
        Operation.RoundDown => Math.Floor(x[0] / x[1]) * x[1],
        Operation.RoundNearest => Nearest(x[0] / x[1]) * x[1],
        Operation.InFeet => x[0] / 304_800_000m,
        Operation.Apart => Math.Abs(x[0] - x[1]),
        Operation.SquareDistance => Math.Abs(x[0] - x[2]) + Math.Abs(x[1] - x[3]),
        Operation.StraightDistance => Nearest((decimal)Math.Sqrt(Math.Pow((double)((x[0] - x[2]) / Sixteenth), 2) + Math.Pow((double)((x[1] - x[3]) / Sixteenth), 2))) * Sixteenth,
        Operation.PartWay => x[0] + (x[3] == 0 ? 0 : Nearest((x[1] - x[0]) * x[2] / x[3] / Sixteenth) * Sixteenth),
        Operation.TrianglePercentile => Triangle.Percentile(x[1], x[2], x[3], x[0] / 100m),
        Operation.DrawnPercentile => Triangle.DrawnPercentile(x),
        Operation.DrawnShare => Triangle.DrawnShare(x),
        _ => throw new InvalidOperationException($"{operation} is not known here."),
    };

    private static decimal Nearest(decimal value) => Math.Sign(value) * Math.Floor(Math.Abs(value) + 0.5m);
}
